package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.List;

/**
 * One field to find a place for.
 *
 * @param path the concrete path; with a star where one value serves all axes or ends
 * @param axis a bit of {@link Axes}; 0 where it has none, {@link Axes#ALL} where shared
 * @param end {@link Dims#LOWER}, {@link Dims#UPPER}; 0 where it has none, -1 where shared
 * @param heater index into {@link Dims#HEATERS} plus one; 0 where it has none
 */
record FieldRow(String path, LearnableField field, int axis, int end, int heater) {
  boolean shared() {
    return axis == Axes.ALL;
  }

  /** The most that a perfect candidate could score. */
  double most() {
    double most = 1;
    for (LearnableField.Term term : field.terms()) {
      most += term.w();
    }
    most += field.perAxis() || field.perEnd() ? 1.6 : 0;
    most += field.perEnd() ? 1.4 : 0;
    return most + (field.perHeater() ? 1.7 : 0);
  }

  static List<FieldRow> all(List<LearnableField> fields, Axes axes) {
    List<FieldRow> rows = new ArrayList<>();
    for (LearnableField field : fields) {
      if (field.perAxis()) {
        axes(field, axes, rows);
      } else if (field.perEnd()) {
        ends(field, axes, rows);
      } else if (field.perHeater()) {
        for (int i = 0; i < Dims.HEATERS.size(); i++) {
          String path = field.path().replace("*", Dims.HEATERS.get(i));
          rows.add(new FieldRow(path, field, 0, 0, i + 1));
        }
      } else {
        rows.add(new FieldRow(field.path(), field, 0, 0, 0));
      }
    }
    return rows;
  }

  private static void axes(LearnableField field, Axes axes, List<FieldRow> rows) {
    for (int i = 0; i < axes.names().size(); i++) {
      String name = axes.names().get(i);
      if (!field.not().contains(name.substring(0, 1))) {
        rows.add(new FieldRow(field.path().replace("*", name), field, 1 << i, 0, 0));
      }
    }
    rows.add(new FieldRow(field.path(), field, Axes.ALL, 0, 0));
  }

  private static void ends(LearnableField field, Axes axes, List<FieldRow> rows) {
    for (int i = 0; i < axes.names().size(); i++) {
      String name = axes.names().get(i);
      if (name.startsWith("e")) {
        continue;
      }
      rows.add(new FieldRow(field.path().replace("*", name + "Min"), field, 1 << i, Dims.LOWER, 0));
      rows.add(new FieldRow(field.path().replace("*", name + "Max"), field, 1 << i, Dims.UPPER, 0));
    }
    if (!field.path().endsWith(".pin")) {
      rows.add(new FieldRow(field.path(), field, Axes.ALL, -1, 0));
    }
  }
}
