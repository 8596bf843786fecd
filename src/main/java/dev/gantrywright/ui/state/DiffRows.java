package dev.gantrywright.ui.state;

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
}
