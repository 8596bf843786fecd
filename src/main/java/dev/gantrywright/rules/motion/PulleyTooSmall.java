package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.about;

import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.physics.BeltGeometry;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The pulley has fewer teeth than belts bear. */
@Rule(
    id = "GW-M015",
    slug = "pulley-too-small",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The pulley has fewer teeth than belts bear",
    reads = {"axes.*.drive.teeth", "axes.*.drive.kind", "axes.*.drive.pitch"},
    source = "belt makers' least tooth counts, 12 for pitches of 2 to 3 mm (memory)")
public final class PulleyTooSmall implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Integer teeth = axis.drive().teeth();
              if (axis.drive().kind() == DriveKind.BELT && teeth != null && teeth < 12) {
                sink.report(
                    "axes." + name + ".drive.teeth",
                    "found "
                        + teeth
                        + " teeth, 12 are the usual least: "
                        + (axis.drive().pitch() == null
                            ? ""
                            : about(BeltGeometry.pitchDiameterMm(teeth, axis.drive().pitch()))
                                + " mm across, ")
                        + "too tight a bend for the cords",
                    Remedy.show("count the teeth again"));
              }
            });
  }
}
