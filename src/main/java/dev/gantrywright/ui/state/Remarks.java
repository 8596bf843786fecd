package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Views of a list of remarks. */
public final class Remarks {
  private Remarks() {}

  /** The gravest remark of each part that has one, by part id. */
  public static Map<String, Gravity> byPart(
      PrinterProfile profile, PartTable table, List<Remark> remarks) {
    Map<String, Gravity> marks = new LinkedHashMap<>();
    for (Remark remark : remarks) {
      table
          .partOf(profile, remark.path() + (remark.path().indexOf('.') > 0 ? "" : "."))
          .or(() -> table.partOf(profile, remark.path()))
          .or(() -> whole(profile, table, remark.path()))
          .ifPresent(
              part -> marks.merge(part.id(), remark.gravity(), (a, b) -> a.atLeast(b) ? a : b));
    }
    return marks;
  }

  /** A remark on a whole axis, endstop or heater belongs to its part. */
  private static Optional<Part> whole(PrinterProfile profile, PartTable table, String path) {
    return table.parts(profile).stream().filter(part -> part.id().equals(path)).findFirst();
  }

  public static int count(List<Remark> remarks, Gravity gravity) {
    return (int) remarks.stream().filter(remark -> remark.gravity() == gravity).count();
  }

  /** "1 error · 2 warnings", the gravest two; empty where there is none. */
  public static String counted(List<Remark> remarks) {
    StringBuilder words = new StringBuilder();
    int kinds = 0;
    for (Gravity gravity : Gravity.values()) {
      int count = count(remarks, gravity);
      if (count > 0 && kinds++ < 2) {
        words
            .append(words.isEmpty() ? "" : " · ")
            .append(Texts.of("count." + gravity.word(), count));
      }
    }
    return words.toString();
  }
}
