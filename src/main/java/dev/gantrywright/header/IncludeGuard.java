package dev.gantrywright.header;

/** Recognises {@code #ifndef NAME / #define NAME … #endif} around a whole header. */
final class IncludeGuard {
  private IncludeGuard() {}

  /** The row of the guard's {@code #ifndef}, or -1 if the file has none. */
  static int row(SourceFile file) {
    DirectiveTable table = file.table();
    int first = 0;
    while (first < table.size() && table.kind(first) != DirectiveKind.IFNDEF) {
      DirectiveKind kind = table.kind(first);
      if (kind != DirectiveKind.OFF_DEFINE && kind != DirectiveKind.PRAGMA) {
        return -1;
      }
      first++;
    }
    if (first + 1 >= table.size() || table.kind(first + 1) != DirectiveKind.DEFINE) {
      return -1;
    }
    int close = table.link(first);
    boolean whole = close == table.size() - 1 && table.kind(close) == DirectiveKind.ENDIF;
    return whole && file.name(first).equals(file.name(first + 1)) ? first : -1;
  }
}
