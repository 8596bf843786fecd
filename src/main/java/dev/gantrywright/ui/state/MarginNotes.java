package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Views of a list of notes. */
public final class MarginNotes {
  private MarginNotes() {}

  /** The gravest note of each part that has one, by part id. */
  public static Map<String, Gravity> byPart(
      PrinterProfile profile, PartTable table, List<MarginNote> notes) {
    Map<String, Gravity> marks = new LinkedHashMap<>();
    for (MarginNote note : notes) {
      table
          .partOf(profile, note.path() + (note.path().indexOf('.') > 0 ? "" : "."))
          .or(() -> table.partOf(profile, note.path()))
          .or(() -> whole(profile, table, note.path()))
          .ifPresent(
              part -> marks.merge(part.id(), note.gravity(), (a, b) -> a.atLeast(b) ? a : b));
    }
    return marks;
  }

  /** A note on a whole axis, endstop or heater belongs to its part. */
  private static Optional<Part> whole(PrinterProfile profile, PartTable table, String path) {
    return table.parts(profile).stream().filter(part -> part.id().equals(path)).findFirst();
  }

  public static int count(List<MarginNote> notes, Gravity gravity) {
    return (int) notes.stream().filter(note -> note.gravity() == gravity).count();
  }

  /** "1 error · 2 warnings", the gravest two; empty where there is none. */
  public static String counted(List<MarginNote> notes) {
    StringBuilder words = new StringBuilder();
    int kinds = 0;
    for (Gravity gravity : Gravity.values()) {
      int count = count(notes, gravity);
      if (count > 0 && kinds++ < 2) {
        words
            .append(words.isEmpty() ? "" : " · ")
            .append(Texts.of("count." + gravity.word(), count));
      }
    }
    return words.toString();
  }
}
