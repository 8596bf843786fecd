package dev.gantrywright.patch;

import dev.gantrywright.names.ListParts;
import java.util.Map;
import java.util.TreeMap;

/** A value of several parts in which some are replaced, from the last to the first. */
final class RewrittenParts {
  private final String value;
  private final ListParts list;
  private final TreeMap<Integer, String> texts = new TreeMap<>();

  RewrittenParts(String value, ListParts list) {
    this.value = value;
    this.list = list;
  }

  void put(int element, String text) {
    texts.put(element, text);
  }

  String text() {
    String result = value;
    for (Map.Entry<Integer, String> part : texts.descendingMap().entrySet()) {
      result = ListParts.with(result, list.parts().get(part.getKey()), part.getValue());
    }
    return result;
  }
}
