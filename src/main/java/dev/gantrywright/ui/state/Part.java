package dev.gantrywright.ui.state;

import java.util.List;

/**
 * One part of the machine with the fields that describe it.
 *
 * @param id {@code board}, {@code axes.x}, {@code endstops.xMin} …
 * @param title as the outline and the heading say it
 * @param groups its fields in the order of the work
 */
public record Part(String id, String title, List<Group> groups) {
  /**
   * Fields that belong together.
   *
   * @param title empty for the first group
   * @param rows in order
   */
  public record Group(String title, List<Row> rows) {}

  /**
   * One field.
   *
   * @param path its concrete path
   * @param whenPath the field on which it depends; empty where it always applies
   * @param whenValue the value of that field for which it applies
   */
  public record Row(String path, String whenPath, String whenValue) {}

  /** Whether the path of a value or finding belongs to this part. */
  public boolean holds(String path) {
    return path.startsWith(id + ".")
        || groups.stream()
            .flatMap(group -> group.rows().stream())
            .anyMatch(row -> row.path().equals(path));
  }
}
