package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.PrinterProfile;

/**
 * What of a profile the machine plan shows: most edits leave the drawing as it is, and its marks
 * stand in a layer of their own.
 */
final class PlanLooks {
  private PlanLooks() {}

  /** Equal for two contents that are drawn alike. */
  static String of(PlanContent content) {
    PrinterProfile profile = content.profile();
    StringBuilder looks = new StringBuilder();
    looks.append(profile.kinematics()).append(profile.board().mcu()).append(profile.supply());
    profile
        .axes()
        .forEach(
            (name, axis) ->
                looks
                    .append(name)
                    .append(axis.travelMin())
                    .append(axis.travelMax())
                    .append(axis.homing().end()));
    profile
        .endstops()
        .forEach((name, end) -> looks.append(name).append(end.fitted()).append(end.contact()));
    looks.append(profile.heaters().keySet()).append(content.boardName()).append(content.chosen());
    looks.append(new java.util.TreeMap<>(content.seen()));
    return looks.append(new java.util.TreeSet<>(content.disagreeing())).toString();
  }
}
