package dev.gantrywright.names;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a setting that carries a field looks like, from {@code learnable-fields.json}.
 *
 * @param path with a star for axis, axis end or heater
 * @param terms what its words must speak of
 * @param neutral concepts that say nothing for or against it
 * @param against concepts that speak for another field
 * @param shape what its value looks like
 * @param typical usual magnitude; null where it has none
 * @param range possible magnitude; null where it has none
 * @param unit the field's own unit; null where it has none
 * @param not axes that do not have it
 * @param switchBonus added where it is a bare {@code #define}
 */
record LearnableField(
    String path,
    List<Term> terms,
    List<String> neutral,
    List<String> against,
    Shape shape,
    double[] typical,
    double[] range,
    String unit,
    List<String> not,
    double switchBonus) {
  /** What its value looks like. */
  enum Shape {
    number,
    flag,
    index,
    baud,
    enumeration,
    text,
    part,
    target,
    driver,
    end,
    contact,
    pin,
    sensor
  }

  /**
   * One thing that its words must speak of.
   *
   * @param any concepts of which one will do
   * @param w what it adds
   * @param miss what its absence takes away
   */
  record Term(List<String> any, double w, double miss) {}

  private record Raw(
      String path,
      List<Term> terms,
      List<String> neutral,
      List<String> against,
      String shape,
      double[] typical,
      double[] range,
      String unit,
      List<String> not,
      Double switchBonus) {}

  private record Table(String source, List<Raw> fields) {}

  /** The table that ships with the program. */
  static List<LearnableField> all() {
    try (InputStream in = LearnableField.class.getResourceAsStream("learnable-fields.json")) {
      List<LearnableField> fields = new ArrayList<>();
      for (Raw raw : JsonMapper.shared().readValue(in, Table.class).fields()) {
        fields.add(of(raw));
      }
      return List.copyOf(fields);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static LearnableField of(Raw raw) {
    return new LearnableField(
        raw.path(),
        Ordered.list(raw.terms()),
        Ordered.list(raw.neutral()),
        Ordered.list(raw.against()),
        raw.shape().equals("enum") ? Shape.enumeration : Shape.valueOf(raw.shape()),
        raw.typical(),
        raw.range(),
        raw.unit(),
        Ordered.list(raw.not()),
        raw.switchBonus() == null ? 0 : raw.switchBonus());
  }

  /** Fields come from one table: two are the same only where they are one. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }

  boolean perAxis() {
    return path.startsWith("axes.*");
  }

  boolean perEnd() {
    return path.startsWith("endstops.*");
  }

  boolean perHeater() {
    return path.startsWith("heaters.*");
  }
}
