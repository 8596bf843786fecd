package dev.gantrywright.cli;

import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.names.BuildTarget;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.OtherName;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** A name map as lines to read: what asks first, then the least sure. */
final class NamesText {
  /** A column is not made wider than this for one long name. */
  private static final int WIDEST = 36;

  private static final String MARGIN = " ".repeat(8);

  private final NameMap map;
  private final PrintWriter out;
  private final int columns;
  private final int paths;
  private final int macros;
  private final int meanings;

  private NamesText(NameMap map, PrintWriter out, int columns) {
    this.map = map;
    this.out = out;
    this.columns = columns;
    paths = widest(map.fields().keySet().stream());
    macros = widest(map.fields().values().stream().map(NamesText::shown));
    int wide = widest(map.fields().values().stream().map(NamesText::meaning));
    int places = widest(map.fields().values().stream().map(NamesText::place));
    // What it means stands in the line of the evidence, too, where it was learned.
    meanings = 12 + paths + macros + wide + places > columns ? 0 : wide;
  }

  private static String place(NameEntry entry) {
    return entry.macro() == null ? "" : entry.file() + ":" + entry.line();
  }

  /**
   * @param columns of the terminal; without the column of meanings where it is too narrow
   */
  static void print(NameMap map, PrintWriter out, int columns) {
    new NamesText(map, out, columns).print();
  }

  private static int widest(Stream<String> texts) {
    return Math.min(WIDEST, texts.mapToInt(String::length).max().orElse(0));
  }

  private void print() {
    List<Map.Entry<String, NameEntry>> worstFirst = new ArrayList<>(map.fields().entrySet());
    worstFirst.sort(
        Comparator.comparing((Map.Entry<String, NameEntry> one) -> one.getValue().sure())
            .thenComparing(one -> one.getValue().byUser())
            .thenComparing(one -> one.getValue().confidence()));
    worstFirst.forEach(one -> field(one.getKey(), one.getValue()));
    map.boards().forEach(board -> board(board, out));
    map.targets().forEach(target -> target(target, out));
    long unsure = map.fields().values().stream().filter(entry -> !entry.sure()).count();
    out.println(
        Counted.of(map.fields().size(), "field")
            + ", "
            + unsure
            + " to confirm; "
            + Counted.of(map.boards().size(), "board")
            + ", "
            + Counted.of(map.targets().size(), "build target"));
  }

  private void field(String path, NameEntry entry) {
    String means = meanings == 0 ? "%s" : "%-" + meanings + "s  ";
    String row = "%s%5s  %-" + paths + "s  %-" + macros + "s  " + means + "%s";
    String place = place(entry);
    String mark = entry.sure() ? " " : "?";
    String line =
        String.format(
            Locale.ROOT,
            row,
            mark,
            standing(entry),
            path,
            shown(entry),
            meanings == 0 ? "" : meaning(entry),
            place);
    out.println(line.stripTrailing());
    if (entry.macro() != null) {
      out.print(Paragraph.of(MARGIN, MARGIN, String.join("; ", entry.evidence()), columns));
    }
    if (!entry.sure() && !entry.others().isEmpty()) {
      List<String> others =
          entry.others().stream()
              .map(
                  (OtherName other) ->
                      shown(other.macro(), other.element()) + " " + percent(other.confidence()))
              .toList();
      out.println("        or " + String.join(", or ", others));
    }
  }

  private static String standing(NameEntry entry) {
    return entry.byUser() ? "yours" : percent(entry.confidence());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static String meaning(NameEntry entry) {
    return entry.meaning() == null ? "" : entry.meaning();
  }

  private static String shown(NameEntry entry) {
    return entry.macro() == null ? "not in this firmware" : shown(entry.macro(), entry.element());
  }

  private static String shown(String macro, Integer element) {
    return element == null ? macro : macro + "[" + element + "]";
  }

  private static void board(BoardConstant board, PrintWriter out) {
    out.println(
        (board.chosen() ? "* " : "  ")
            + "board "
            + board.constant()
            + (board.number() == null ? "" : " = " + board.number())
            + (board.mcu() == null ? "" : ", " + board.mcu())
            + (board.targets().isEmpty()
                ? ""
                : ", build target " + String.join(" or ", board.targets())));
    board.notes().forEach(note -> out.println("      " + note));
  }

  private static void target(BuildTarget target, PrintWriter out) {
    out.println(
        (target.chosen() ? "* " : "  ")
            + "build target "
            + target.name()
            + (target.mcu() == null ? "" : ", " + target.mcu())
            + (target.boards().isEmpty() ? "" : ", board " + String.join(" or ", target.boards())));
    target.notes().forEach(note -> out.println("      " + note));
  }
}
