package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The one spelling of an enumerated value: that of the file format. */
final class Words {
  private static final Map<Enum<?>, String> KNOWN = new ConcurrentHashMap<>();

  private Words() {}

  static String of(Enum<?> constant) {
    return KNOWN.computeIfAbsent(constant, Words::read);
  }

  private static String read(Enum<?> constant) {
    try {
      return constant
          .getDeclaringClass()
          .getField(constant.name())
          .getAnnotation(JsonProperty.class)
          .value();
    } catch (NoSuchFieldException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
