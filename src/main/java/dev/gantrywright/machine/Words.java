package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** The one spelling of an enumerated value: that of the file format. */
final class Words {
  private Words() {}

  static String of(Enum<?> constant) {
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
