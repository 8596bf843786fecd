package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** No common screw has this lead. */
@Rule(
    id = "GW-M014",
    slug = "lead-unusual",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "No common screw has this lead",
    reads = {"axes.*.drive.lead", "axes.*.drive.kind"},
    source =
        "lead is pitch times starts; pitches of ISO 261 and ISO 2904 in the catalogue; up to eight starts")
public final class LeadUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double lead = axis.drive().lead();
              if (lead == null || axis.drive().kind() != DriveKind.SCREW) {
                return;
              }
              boolean common =
                  context.catalog().screws().stream()
                      .anyMatch(
                          screw -> {
                            double starts = lead / screw.pitchMm();
                            return starts < 8.5
                                && starts > 0.5
                                && Math.abs(starts - Math.rint(starts)) < 0.005;
                          });
              if (!common) {
                sink.report(
                    "axes." + name + ".drive.lead",
                    "found " + n(lead) + " mm, which is no whole multiple of a catalogued pitch");
              }
            });
  }
}
