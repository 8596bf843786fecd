package dev.gantrywright.names;

import java.util.List;

/**
 * One build target that the folder's build settings list.
 *
 * @param name as the build command takes it
 * @param section the section that describes it
 * @param mcu the part that it builds for; null where none is named
 * @param comment what stands beside it
 * @param boards board constants whose part fits
 * @param chosen whether it is the folder's default now
 * @param notes duplicates and near-misses, each one line
 */
public record BuildTarget(
    String name,
    String section,
    String mcu,
    String comment,
    String file,
    int line,
    List<String> boards,
    boolean chosen,
    List<String> notes) {
  public BuildTarget {
    boards = Ordered.list(boards);
    notes = Ordered.list(notes);
  }
}
