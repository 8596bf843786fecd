package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Waiver;
import java.util.LinkedHashMap;
import java.util.Map;

/** Setting a note aside. */
final class Waived {
  private Waived() {}

  /**
   * The profile with one more waiver.
   *
   * @param evidence what the note was found on; the waiver holds while it is the same
   * @param date ISO date
   */
  static PrinterProfile with(
      PrinterProfile p, String key, String evidence, String reason, String date) {
    Map<String, Waiver> waivers = new LinkedHashMap<>(p.waivers());
    waivers.put(key, new Waiver(reason.strip(), evidence, date, null));
    return new PrinterProfile(
        p.format(),
        p.name(),
        p.notes(),
        p.board(),
        p.serial(),
        p.kinematics(),
        p.axes(),
        p.endstops(),
        p.heaters(),
        p.supply(),
        p.build(),
        p.link(),
        waivers,
        p.printing(),
        p.more());
  }
}
