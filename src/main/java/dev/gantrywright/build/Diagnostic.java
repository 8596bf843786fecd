package dev.gantrywright.build;

import java.util.List;
import java.util.OptionalLong;

/**
 * What a compiler, a linker or make said.
 *
 * @param origin who said it
 * @param level how much it weighs
 * @param file as printed; empty where none is named
 * @param line from 1; 0 where none is named
 * @param column from 1; 0 where none is named
 * @param flag the switch that controls it, as {@code -Wunused-variable}; empty where there is none
 * @param text the message
 * @param names identifiers that the message names in quotes, in order
 * @param overBytes by how much a memory region is over, where the linker says so
 * @param notes what was added to explain it
 */
public record Diagnostic(
    Origin origin,
    Level level,
    String file,
    int line,
    int column,
    String flag,
    String text,
    List<String> names,
    OptionalLong overBytes,
    List<Note> notes) {
  /** Who said it. */
  public enum Origin {
    COMPILER,
    ASSEMBLER,
    LINKER,
    MAKE,
    SHELL
  }

  /** How much it weighs. */
  public enum Level {
    ERROR,
    WARNING,
    NOTE
  }

  /** A place that a diagnostic points to besides its own. */
  public record Note(String file, int line, int column, String text) {}

  public Diagnostic {
    names = List.copyOf(names);
    notes = List.copyOf(notes);
  }

  static Diagnostic of(Origin origin, Level level, String file, int line, String text) {
    return new Diagnostic(
        origin,
        level,
        file,
        line,
        0,
        "",
        text,
        QuotedNames.in(text),
        OptionalLong.empty(),
        List.of());
  }

  Diagnostic over(long bytes) {
    return new Diagnostic(
        origin, level, file, line, column, flag, text, names, OptionalLong.of(bytes), notes);
  }

  Diagnostic with(Note note) {
    List<Note> more = new java.util.ArrayList<>(notes);
    more.add(note);
    return new Diagnostic(origin, level, file, line, column, flag, text, names, overBytes, more);
  }
}
