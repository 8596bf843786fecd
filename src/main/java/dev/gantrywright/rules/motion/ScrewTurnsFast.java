package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Top speed turns the screw faster than plain nuts bear. */
@Rule(
    id = "GW-M027",
    slug = "screw-turns-fast",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Top speed turns the screw faster than plain nuts bear",
    reads = {"axes.*.maxSpeed", "axes.*.drive.kind", "axes.*.drive.lead"},
    source =
        "10 turns a second, 600 rpm, as the most for a plain nut on an unsupported screw (common practice, no published source)")
public final class ScrewTurnsFast implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.drive().kind() != DriveKind.SCREW
                  || !known(axis.maxSpeed(), axis.drive().lead())) {
                return;
              }
              double turns = axis.maxSpeed() / axis.drive().lead();
              if (turns > 10) {
                double speed = 10 * axis.drive().lead();
                String path = "axes." + name + ".maxSpeed";
                sink.report(
                    path,
                    n(axis.maxSpeed())
                        + " mm/s on a lead of "
                        + n(axis.drive().lead())
                        + " mm: "
                        + about(turns)
                        + " turns a second, about 10 are usual at most",
                    Remedy.review("Limit to " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
