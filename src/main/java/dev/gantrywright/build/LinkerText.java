package dev.gantrywright.build;

import dev.gantrywright.build.Diagnostic.Level;
import dev.gantrywright.build.Diagnostic.Origin;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What GNU ld, gold and LLVM lld say. Their messages often name no line; a region that is too small
 * is read as "over by N bytes".
 *
 * <p>Source: messages of GNU binutils 2.40 as produced here; lld's as its own tests show (memory).
 */
final class LinkerText implements DiagnosticReader.LineReader {
  private static final Pattern OVERFLOWED =
      Pattern.compile("region [`'‘\"]?([^'’\"]+)['’\"]? overflowed by (\\d+) bytes?");
  private static final Pattern LLD_OVERFLOWED =
      Pattern.compile("will not fit in region ['\"]([^'\"]+)['\"]: overflowed by (\\d+) bytes?");
  private static final Pattern IN_OBJECT =
      Pattern.compile(
          "^(?:\\S*ld(?:\\.\\w+)?(?:\\.exe)?: )?(.+?):\\(([^)]+)\\): "
              + "(undefined reference to|multiple definition of|relocation truncated|warning:) ?(.*)$");
  private static final Pattern LINED =
      Pattern.compile(
          "^(?:\\S*ld(?:\\.\\w+)?(?:\\.exe)?: )?(?:[^:\\s][^:]*\\.o\\)?:)?([^:\\s][^:]*):(\\d+): "
              + "((?:undefined reference to|multiple definition of|first defined here).*)$");
  private static final Pattern BARE =
      Pattern.compile(
          "^(?:\\S*/)?(?:\\S*-)?(ld|ld\\.bfd|ld\\.gold|ld\\.lld|lld|collect2)"
              + "(?:-[0-9.]+)?(?:\\.exe)?: (.*)$");

  @Override
  public Optional<Diagnostic> read(String line) {
    for (Pattern p : List.of(OVERFLOWED, LLD_OVERFLOWED)) {
      Matcher over = p.matcher(line);
      if (over.find() && over.group(2).length() < 18) {
        String text = "region " + over.group(1) + " is over by " + over.group(2) + " bytes";
        return Optional.of(
            Diagnostic.of(Origin.LINKER, Level.ERROR, "", 0, text)
                .over(Long.parseLong(over.group(2))));
      }
    }
    Matcher lined = LINED.matcher(line);
    if (lined.matches() && lined.group(2).length() <= 9) {
      return Optional.of(
          Diagnostic.of(
              Origin.LINKER,
              Level.ERROR,
              lined.group(1),
              Integer.parseInt(lined.group(2)),
              lined.group(3)));
    }
    Matcher object = IN_OBJECT.matcher(line);
    if (object.matches()) {
      boolean warning = object.group(3).equals("warning:");
      String text = warning ? object.group(4) : object.group(3) + " " + object.group(4);
      return Optional.of(
          Diagnostic.of(
              Origin.LINKER, warning ? Level.WARNING : Level.ERROR, object.group(1), 0, text));
    }
    Matcher bare = BARE.matcher(line);
    return bare.matches() ? plain(bare.group(1), bare.group(2)) : Optional.empty();
  }

  private static Optional<Diagnostic> plain(String tool, String text) {
    boolean title =
        text.matches(".*: in function [`'‘].*:$") || text.matches("\\S+: in function.*");
    if (title) {
      return Optional.empty();
    }
    if (text.startsWith("warning: ")) {
      return Optional.of(
          Diagnostic.of(Origin.LINKER, Level.WARNING, "", 0, text.substring("warning: ".length())));
    }
    if (text.contains(": warning: ")) {
      return Optional.of(Diagnostic.of(Origin.LINKER, Level.WARNING, "", 0, text));
    }
    String message = text.startsWith("error: ") ? text.substring("error: ".length()) : text;
    // collect2 only repeats that the linker failed.
    Level level = tool.equals("collect2") ? Level.NOTE : Level.ERROR;
    return Optional.of(Diagnostic.of(Origin.LINKER, level, "", 0, message));
  }
}
