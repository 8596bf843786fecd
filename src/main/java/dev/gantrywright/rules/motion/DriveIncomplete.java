package dev.gantrywright.rules.motion;

import dev.gantrywright.machine.Drive;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The drive lacks the one fact that its kind needs. */
@Rule(
    id = "GW-M028",
    slug = "drive-incomplete",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The drive lacks the one fact that its kind needs",
    reads = {"axes.*.drive.**"},
    source =
        "definition: a belt moves pitch times teeth a turn, a screw its lead, a wheel its circumference")
public final class DriveIncomplete implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Drive drive = axis.drive();
              if (drive.kind() == null || DriveTrain.travel(drive).isPresent()) {
                return;
              }
              String lacks =
                  switch (drive.kind()) {
                    case BELT -> "pitch and teeth";
                    case SCREW -> "a lead";
                    case GEAR -> "a diameter";
                  };
              sink.report(
                  "axes." + name + ".drive.kind",
                  "found "
                      + drive.kind().word()
                      + ", which needs "
                      + lacks
                      + "; steps/mm stay unchecked",
                  Remedy.show("state " + lacks + ", or the right kind of drive"));
            });
  }
}
