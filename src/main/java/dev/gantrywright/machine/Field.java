package dev.gantrywright.machine;

import java.util.List;

/**
 * What is known of one profile field.
 *
 * @param path the field's path; {@code *} stands for an axis, axis end or heater name
 * @param label what a form calls it
 * @param unit as shown behind the value; null where it has none
 * @param choices the values that a choice may take
 * @param minimum lowest value taken, in {@code unit}; null where there is none
 * @param maximum highest value taken, in {@code unit}; null where there is none
 * @param help what it is
 * @param find how to find it on the machine; null where nothing need be said
 * @param caution what can hurt while finding it; null where nothing can
 */
public record Field(
    String path,
    String label,
    FieldType type,
    String unit,
    List<String> choices,
    Double minimum,
    Double maximum,
    String help,
    String find,
    String caution) {
  public Field {
    choices = Kept.list(choices);
  }

  /** Whether this field describes the value at a concrete path, {@code axes.x.stepsPerMm}. */
  public boolean describes(String concretePath) {
    int star = path.indexOf('*');
    if (star < 0) {
      return path.equals(concretePath);
    }
    String before = path.substring(0, star);
    String after = path.substring(star + 1);
    return concretePath.length() > before.length() + after.length()
        && concretePath.startsWith(before)
        && concretePath.endsWith(after)
        && concretePath.indexOf('.', before.length()) == concretePath.length() - after.length();
  }

  /** The concrete path for one axis, axis end or heater. */
  public String at(String name) {
    return path.replace("*", name);
  }
}
