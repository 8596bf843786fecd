package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.state.Texts;

/** What a part is, in a few words after its title. */
final class PartSubtitle {
  private PartSubtitle() {}

  static String of(PrinterProfile profile, String id) {
    String name = id.substring(id.indexOf('.') + 1);
    if (id.startsWith("axes.") && profile.axes().containsKey(name)) {
      return axis(profile, name);
    }
    if (id.startsWith("endstops.")) {
      Endstop endstop = profile.endstops().get(name);
      boolean fitted = endstop != null && Boolean.TRUE.equals(endstop.fitted());
      return Texts.of(fitted ? "subtitle.fitted" : "subtitle.notFitted");
    }
    return Texts.orElse("subtitle." + id, "");
  }

  private static String axis(PrinterProfile profile, String name) {
    Axis axis = profile.axes().get(name);
    DriveKind kind = axis.drive().kind();
    if (kind == null) {
      return "";
    }
    String drive = Texts.of("subtitle.drive." + kind.word());
    if (name.startsWith("e")) {
      return drive + ", " + Texts.of("subtitle.feeds");
    }
    if (profile.kinematics() == Kinematics.COREXY && !name.equals("z")) {
      return drive + ", " + Texts.of("subtitle.shared");
    }
    return drive;
  }
}
