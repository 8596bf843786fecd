package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds places among the rows of a plan. */
public final class DiffRows {
  private DiffRows() {}

  /** Where each profile field stands among these rows, by path. */
  public static Map<String, Integer> places(List<DiffRow> rows) {
    Map<String, Integer> places = new LinkedHashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      for (String path : rows.get(i).path().split(", ")) {
        if (!path.isEmpty()) {
          places.putIfAbsent(path, i);
        }
      }
    }
    return places;
  }

  /**
   * The rows with their reasons in rows of their own, for a view too narrow for a margin: below
   * each changed line what causes it, above the lines that the compiler does not see why not.
   */
  public static List<DiffRow> withReasons(List<DiffRow> rows) {
    List<DiffRow> all = new ArrayList<>(rows.size() + rows.size() / 4);
    String faded = "";
    for (DiffRow row : rows) {
      if (!row.faded().isEmpty() && !row.faded().equals(faded)) {
        all.add(reason(row, "", row.faded(), row.faded()));
      }
      faded = row.faded();
      all.add(row);
      if (row.kind() == DiffRow.Kind.CHANGED) {
        all.add(reason(row, row.path(), row.cause(), ""));
      }
    }
    return all;
  }

  private static DiffRow reason(DiffRow of, String path, String words, String faded) {
    return new DiffRow(DiffRow.Kind.REASON, of.file(), of.line(), "", "", path, words, faded);
  }
}
