package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Unmodifiable copies that keep their order, so that a saved map differs only where it changed. */
final class Ordered {
  private Ordered() {}

  static <K, V> Map<K, V> map(Map<K, V> map) {
    return map == null || map.isEmpty()
        ? Map.of()
        : Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  static <T> List<T> list(List<T> list) {
    return list == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(list));
  }
}
