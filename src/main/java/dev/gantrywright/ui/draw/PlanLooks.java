package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.PrinterProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What of a profile the machine plan shows: most edits leave the drawing as it is, and its marks
 * stand in a layer of their own.
 */
final class PlanLooks {
  private PlanLooks() {}

  /** Equal for two contents that are drawn alike. */
  static List<Object> of(PlanContent content) {
    PrinterProfile profile = content.profile();
    List<Object> looks = new ArrayList<>();
    add(looks, profile.kinematics(), profile.board().mcu(), profile.supply());
    profile
        .axes()
        .forEach(
            (name, axis) ->
                add(looks, name, axis.travelMin(), axis.travelMax(), axis.homing().end()));
    profile.endstops().forEach((name, end) -> add(looks, name, end.fitted(), end.contact()));
    add(looks, List.copyOf(profile.heaters().keySet()), content.boardName(), content.chosen());
    add(looks, content.drivers(), content.seen(), content.disagreeing());
    return looks;
  }

  private static void add(List<Object> looks, Object... more) {
    looks.addAll(Arrays.asList(more));
  }
}
