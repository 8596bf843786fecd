package dev.gantrywright.ui.names;

import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.names.BuildTarget;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A board constant or a build target as the list shows it.
 *
 * @param target whether it is a build target
 * @param number the value that tells a board from the others; empty where there is none
 * @param mcu empty where none is named
 * @param fits the names on the other side whose part fits
 * @param chosen whether the folder is set to it now
 */
record BoardRow(
    boolean target,
    String name,
    String number,
    String comment,
    String mcu,
    String place,
    List<String> fits,
    boolean chosen,
    List<String> notes) {
  static BoardRow of(BoardConstant board) {
    return new BoardRow(
        false,
        board.constant(),
        text(board.number()),
        text(board.comment()),
        text(board.mcu()),
        board.file() + ":" + board.line(),
        board.targets(),
        board.chosen(),
        board.notes());
  }

  static BoardRow of(BuildTarget target) {
    return new BoardRow(
        true,
        target.name(),
        "",
        text(target.comment()),
        text(target.mcu()),
        target.file() + ":" + target.line(),
        target.boards(),
        target.chosen(),
        target.notes());
  }

  private static String text(String text) {
    return text == null ? "" : text.replaceAll("\\s+", " ").strip();
  }

  /** Both kinds, boards first. */
  static List<BoardRow> all(NamesDesk desk) {
    List<BoardRow> rows = new ArrayList<>();
    desk.map().boards().forEach(board -> rows.add(of(board)));
    desk.map().targets().forEach(target -> rows.add(of(target)));
    return rows;
  }

  /**
   * The profile values that follow from picking it. The other side is filled too where just one
   * fits; where several do, it is left for the user to pick.
   */
  Map<String, String> values() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(target ? "board.target" : "board.constant", name);
    if (!mcu.isEmpty()) {
      values.put("board.mcu", mcu);
    }
    if (fits.size() == 1) {
      values.put(target ? "board.constant" : "board.target", fits.get(0));
    }
    return values;
  }
}
