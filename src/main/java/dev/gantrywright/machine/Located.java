package dev.gantrywright.machine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;

/** Where each value of a JSON text stands: path to line and column of the value. */
final class Located {
  /**
   * @param line from 1
   * @param column from 1
   */
  record Place(int line, int column) {}

  private final Map<String, Place> places = new HashMap<>();

  private Located() {}

  static Located of(byte[] json) {
    Located located = new Located();
    try (JsonParser parser = ProfileFormat.MAPPER.createParser(json)) {
      Deque<String> path = new ArrayDeque<>();
      Deque<Integer> counters = new ArrayDeque<>();
      String name = "";
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        switch (token) {
          case PROPERTY_NAME -> name = parser.currentName();
          case END_OBJECT, END_ARRAY -> {
            path.pollLast();
            counters.pollLast();
          }
          default -> {
            String own = counters.isEmpty() ? "" : name;
            if (!counters.isEmpty() && counters.peekLast() >= 0) {
              own = Integer.toString(counters.pollLast());
              counters.addLast(Integer.parseInt(own) + 1);
            }
            String full = join(path.peekLast(), own);
            located.places.put(full, place(parser.currentTokenLocation()));
            if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
              path.addLast(full);
              counters.addLast(token == JsonToken.START_ARRAY ? 0 : -1);
            }
          }
        }
      }
    }
    return located;
  }

  private static String join(String parent, String own) {
    return parent == null || parent.isEmpty() ? own : parent + "." + own;
  }

  private static Place place(TokenStreamLocation at) {
    return new Place(Math.max(at.getLineNr(), 1), Math.max(at.getColumnNr(), 1));
  }

  /** The place of the value, or of the nearest value that contains it. */
  Place at(String path) {
    for (String p = path; ; p = p.substring(0, p.lastIndexOf('.'))) {
      Place place = places.get(p);
      if (place != null) {
        return place;
      }
      if (p.lastIndexOf('.') < 0) {
        return places.getOrDefault("", new Place(1, 1));
      }
    }
  }
}
