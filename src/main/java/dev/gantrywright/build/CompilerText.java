package dev.gantrywright.build;

import dev.gantrywright.build.Diagnostic.Level;
import dev.gantrywright.build.Diagnostic.Origin;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text form of GCC and Clang: {@code file:line:column: level: message [-Wflag]}, and of the GNU
 * assembler: {@code file:line: Error: message}.
 *
 * <p>Source: GNU Coding Standards, "Formatting Error Messages"; GCC manual, diagnostic message
 * formatting.
 */
final class CompilerText {
  private static final Pattern PLACED =
      Pattern.compile(
          "^((?:[A-Za-z]:)?[^:\\s][^:]*):(\\d+):(?:(\\d+):)? "
              + "(fatal error|error|warning|note|Error|Warning): (.*)$");
  private static final Pattern FLAG = Pattern.compile("^(.*?)\\s*\\[(-[WO][^\\]\\s]*)\\]$");
  private static final Pattern BARE =
      Pattern.compile("^(?:[^\\s:]*/)?([A-Za-z0-9_.+-]+): (fatal error|error|warning): (.*)$");

  Optional<Diagnostic> read(String line) {
    Matcher placed = PLACED.matcher(line);
    if (placed.matches()) {
      String word = placed.group(4);
      Origin origin = Character.isUpperCase(word.charAt(0)) ? Origin.ASSEMBLER : Origin.COMPILER;
      return Optional.of(
          diagnostic(
              origin,
              level(word),
              placed.group(1),
              number(placed.group(2)),
              placed.group(3) == null ? 0 : number(placed.group(3)),
              placed.group(5)));
    }
    Matcher bare = BARE.matcher(line);
    if (bare.matches() && isTool(bare.group(1))) {
      return Optional.of(
          diagnostic(Origin.COMPILER, level(bare.group(2)), "", 0, 0, bare.group(3)));
    }
    return Optional.empty();
  }

  private static boolean isTool(String name) {
    return name.matches(
        ".*(gcc|g\\+\\+|clang|clang\\+\\+|cc1|cc1plus|cc|c\\+\\+|cpp)(-[0-9.]+)?(\\.exe)?");
  }

  private static Diagnostic diagnostic(
      Origin origin, Level level, String file, int line, int column, String message) {
    Matcher flagged = FLAG.matcher(message);
    boolean has = flagged.matches();
    String text = has ? flagged.group(1) : message;
    return new Diagnostic(
        origin,
        level,
        file,
        line,
        column,
        has ? flag(flagged.group(2)) : "",
        text,
        QuotedNames.in(text),
        OptionalLong.empty(),
        List.of());
  }

  /** A warning raised to an error keeps the name of the warning. */
  static String flag(String printed) {
    return printed.startsWith("-Werror=")
        ? "-W" + printed.substring(8)
        : printed.replaceAll(",.*", "");
  }

  static Level level(String word) {
    return switch (word.toLowerCase(java.util.Locale.ROOT)) {
      case "warning" -> Level.WARNING;
      case "note" -> Level.NOTE;
      default -> Level.ERROR;
    };
  }

  private static int number(String digits) {
    return digits.length() > 9 ? 0 : Integer.parseInt(digits);
  }
}
