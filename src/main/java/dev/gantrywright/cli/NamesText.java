package dev.gantrywright.cli;

import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.names.BuildTarget;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.OtherName;
import java.io.PrintWriter;
import java.util.List;

/** A name map as lines to read. */
final class NamesText {
  private NamesText() {}

  static void print(NameMap map, PrintWriter out) {
    map.fields().forEach((path, entry) -> field(path, entry, out));
    map.boards().forEach(board -> board(board, out));
    map.targets().forEach(target -> target(target, out));
    long unsure = map.fields().values().stream().filter(entry -> !entry.sure()).count();
    out.println(
        map.fields().size()
            + " fields, "
            + unsure
            + " to confirm; "
            + map.boards().size()
            + " boards, "
            + map.targets().size()
            + " build targets");
  }

  private static void field(String path, NameEntry entry, PrintWriter out) {
    if (entry.macro() == null) {
      out.println("  " + path + ": not in this firmware");
      return;
    }
    String mark = entry.sure() ? "  " : "? ";
    String meaning = entry.meaning() == null ? "" : " (" + entry.meaning() + ")";
    out.printf(
        "%s%s = %s%s  %s:%d  %.0f %%%n",
        mark,
        path,
        shown(entry.macro(), entry.element()),
        meaning,
        entry.file(),
        entry.line(),
        100 * entry.confidence());
    out.println("      " + String.join("; ", entry.evidence()));
    if (!entry.sure() && !entry.others().isEmpty()) {
      List<String> others =
          entry.others().stream()
              .map((OtherName other) -> shown(other.macro(), other.element()))
              .toList();
      out.println("      or " + String.join(", or ", others));
    }
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
