package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import java.util.List;
import java.util.Map;

/** The fitted endstops of a printer. */
public final class Endstops {
  private Endstops() {}

  /** Axis ends that are fitted, in the order of the profile. */
  public static List<String> fitted(PrinterProfile profile) {
    return profile.endstops().entrySet().stream()
        .filter(entry -> Boolean.TRUE.equals(entry.getValue().fitted()))
        .map(Map.Entry::getKey)
        .toList();
  }
}
