package dev.gantrywright.names;

import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import dev.gantrywright.names.WordReader.Word;
import java.util.List;

/**
 * One place of the folder that could carry a field: a setting, one part of a list, or a key of the
 * build settings.
 *
 * @param macro name of the macro or key
 * @param element index of the part; null for the whole value
 * @param count number of parts of the list; 1 for the whole value
 * @param file relative to the folder
 * @param line counted from 1
 * @param section section of a build-settings key; null for a setting of a header
 * @param setting null for a build-settings key
 * @param text the text of the value or part; empty for a bare {@code #define}
 * @param words the words of the name, and of what names the part
 * @param own how strongly name and part speak of each concept
 * @param all the same with comment, heading, file and value
 * @param dims the axis, end and heater that it may speak of, in every way that its place allows
 * @param unit as its name or comment gives it; empty where neither does
 * @param comment what stands beside and above it
 * @param template its name with axis, end and heater left open, for finding its siblings
 */
record Candidate(
    String macro,
    Integer element,
    int count,
    String file,
    int line,
    String section,
    Setting setting,
    String text,
    List<Word> words,
    float[] own,
    float[] all,
    List<Dims> dims,
    String unit,
    String comment,
    String template) {
  boolean bareSwitch() {
    return setting != null && setting.kind() == Setting.Kind.FLAG;
  }

  boolean on() {
    return setting == null || setting.on();
  }

  boolean dead() {
    return setting != null && setting.state() == State.DEAD;
  }

  boolean key() {
    return setting == null;
  }

  /** Candidates are places, not values: two are the same only where they are one. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }

  /** Its name, with the index of the part. */
  String shown() {
    return element == null ? macro : macro + "[" + element + "]";
  }
}
