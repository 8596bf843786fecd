package dev.gantrywright.machine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Copies that keep their order, so that a saved file differs only where something changed. */
final class Kept {
  private Kept() {}

  static <K, V> Map<K, V> map(Map<K, V> map) {
    return map == null || map.isEmpty()
        ? Map.of()
        : Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  static <T> List<T> list(List<T> list) {
    return list == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(list));
  }
}
