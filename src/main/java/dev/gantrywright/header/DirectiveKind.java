package dev.gantrywright.header;

/** The directives of C17 6.10, and the few that compilers add. */
enum DirectiveKind {
  DEFINE,
  /** A commented-out {@code #define}: no directive to a compiler, a setting to us. */
  OFF_DEFINE,
  UNDEF,
  IF,
  IFDEF,
  IFNDEF,
  ELIF,
  ELIFDEF,
  ELIFNDEF,
  ELSE,
  ENDIF,
  INCLUDE,
  INCLUDE_NEXT,
  IMPORT,
  PRAGMA,
  ERROR,
  LINE,
  /** A lone {@code #}. */
  NULL,
  /** Anything else: kept, never acted on. */
  OTHER;

  private static final DirectiveKind[] ALL = values();

  static DirectiveKind of(int ordinal) {
    return ALL[ordinal];
  }

  boolean opensConditional() {
    return this == IF || this == IFDEF || this == IFNDEF;
  }

  boolean continuesConditional() {
    return this == ELIF || this == ELIFDEF || this == ELIFNDEF || this == ELSE;
  }

  /** The kind that a keyword names, given as ISO-8859-1 bytes. */
  static DirectiveKind ofKeyword(byte[] b, int from, int to) {
    if (to - from == 6 && b[from] == 'd' && is(b, from, "define")) {
      return DEFINE; // nearly every directive of a large header
    }
    switch (to - from) {
      case 2:
        return is(b, from, "if") ? IF : OTHER;
      case 4:
        return is(b, from, "else")
            ? ELSE
            : is(b, from, "elif") ? ELIF : is(b, from, "line") ? LINE : OTHER;
      case 5:
        return is(b, from, "endif")
            ? ENDIF
            : is(b, from, "ifdef")
                ? IFDEF
                : is(b, from, "undef") ? UNDEF : is(b, from, "error") ? ERROR : OTHER;
      case 6:
        return is(b, from, "ifndef")
            ? IFNDEF
            : is(b, from, "pragma") ? PRAGMA : is(b, from, "import") ? IMPORT : OTHER;
      case 7:
        return is(b, from, "include") ? INCLUDE : is(b, from, "elifdef") ? ELIFDEF : OTHER;
      case 8:
        return is(b, from, "elifndef") ? ELIFNDEF : OTHER;
      case 12:
        return is(b, from, "include_next") ? INCLUDE_NEXT : OTHER;
      default:
        return OTHER;
    }
  }

  private static boolean is(byte[] b, int from, String word) {
    for (int i = 0; i < word.length(); i++) {
      if (b[from + i] != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }
}
