package dev.gantrywright.ui.state;

import dev.gantrywright.patch.PlannedLine;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One file of the folder in rows, with the lines that a plan changes. */
final class DiffFile {
  /** Unchanged lines that stay around a changed one. */
  private static final int CONTEXT = 3;

  private final String path;
  private final Map<Integer, String> faded;
  private final List<DiffRow> asItIs = new ArrayList<>();
  private List<PlannedLine> foldedFor = List.of();
  private List<DiffRow> folded = List.of();
  private List<PlannedLine> wholeFor = List.of();
  private List<DiffRow> whole = List.of();

  /**
   * @param faded why the compiler does not see a line, by line
   */
  DiffFile(String path, byte[] bytes, Map<Integer, String> faded) {
    this.path = path;
    this.faded = faded;
    String[] lines = text(bytes).split("\\R", -1);
    int last = lines.length > 1 && lines[lines.length - 1].isEmpty() ? 1 : 0;
    for (int i = 0; i < lines.length - last; i++) {
      String shown = tabs(lines[i]);
      asItIs.add(
          new DiffRow(
              DiffRow.Kind.SAME, path, i + 1, shown, shown, "", "", faded.getOrDefault(i + 1, "")));
    }
  }

  List<DiffRow> folded(List<PlannedLine> lines) {
    if (!lines.equals(foldedFor)) {
      folded = fold(lines);
      foldedFor = lines;
    }
    return folded;
  }

  List<DiffRow> whole(List<PlannedLine> lines) {
    if (!lines.equals(wholeFor)) {
      List<DiffRow> rows = new ArrayList<>(asItIs.size() + 1);
      rows.add(heading(lines));
      rows.addAll(asItIs);
      lines.forEach(line -> rows.set(line.line(), changed(line)));
      whole = rows;
      wholeFor = lines;
    }
    return whole;
  }

  private List<DiffRow> fold(List<PlannedLine> lines) {
    List<DiffRow> rows = new ArrayList<>();
    rows.add(heading(lines));
    int next = 0;
    for (int i = 0; i < lines.size(); i++) {
      int at = lines.get(i).line() - 1;
      int from = Math.max(next, at - CONTEXT);
      hidden(from - next).ifPresent(rows::add);
      rows.addAll(asItIs.subList(from, at));
      rows.add(changed(lines.get(i)));
      int limit = i + 1 < lines.size() ? lines.get(i + 1).line() - 1 : asItIs.size();
      next = Math.min(limit, at + 1 + CONTEXT);
      rows.addAll(asItIs.subList(at + 1, next));
    }
    hidden(asItIs.size() - next).ifPresent(rows::add);
    return rows;
  }

  private DiffRow heading(List<PlannedLine> lines) {
    String words = Texts.of("write.fileLines", lines.size());
    return new DiffRow(DiffRow.Kind.FILE, path, 0, path, words, "", "", "");
  }

  private Optional<DiffRow> hidden(int lines) {
    return lines <= 0
        ? Optional.empty()
        : Optional.of(
            new DiffRow(DiffRow.Kind.FOLD, path, 0, Texts.of("write.fold", lines), "", "", "", ""));
  }

  private DiffRow changed(PlannedLine line) {
    return new DiffRow(
        DiffRow.Kind.CHANGED,
        path,
        line.line(),
        asItIs.get(line.line() - 1).before(),
        tabs(line.after().lines().findFirst().orElse("")),
        line.path(),
        cause(line),
        faded.getOrDefault(line.line(), ""));
  }

  private static String cause(PlannedLine line) {
    if (line.path().isEmpty()) {
      return line.value();
    }
    StringBuilder words = new StringBuilder();
    for (String path : line.path().split(", ")) {
      words.append(words.isEmpty() ? "" : ", ").append(PlaceNames.field(path));
    }
    return words + " " + line.value();
  }

  /** Text in the encoding that it most likely has; every byte shows as something. */
  private static String text(byte[] bytes) {
    String utf8 = new String(bytes, StandardCharsets.UTF_8);
    return utf8.indexOf('\ufffd') < 0 ? utf8 : new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static String tabs(String line) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '\t') {
        do {
          out.append(' ');
        } while (out.length() % 4 != 0);
      } else if (c != '\ufeff') {
        out.append(c);
      }
    }
    return out.toString();
  }
}
