package dev.gantrywright.reference;

/** What the program makes of a handbook row: a value by its own code, or a reason why not. */
public sealed interface Use {

  /**
   * @param value a number, or a text that must be equal to the expected one
   * @param by the class that gave it
   */
  record Value(Object value, String by) implements Use {}

  /**
   * @param why why no part of the program gives this value
   */
  record None(String why) implements Use {}

  static Use number(double value, Class<?> by) {
    return new Value(value, name(by));
  }

  static Use text(String value, Class<?> by) {
    return new Value(value, name(by));
  }

  static Use none(String why) {
    return new None(why);
  }

  private static String name(Class<?> by) {
    return by.getName().replace("dev.gantrywright.", "");
  }
}
