package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Belt;
import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Comparator;

/** No belt of the catalogue has this pitch. */
@Rule(
    id = "GW-M016",
    slug = "belt-pitch-unknown",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "No belt of the catalogue has this pitch",
    reads = {"axes.*.drive.pitch", "axes.*.drive.kind"},
    source = "belt standards and makers' profiles in the catalogue")
public final class BeltPitchUnknown implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double pitch = axis.drive().pitch();
              if (pitch == null || axis.drive().kind() != DriveKind.BELT) {
                return;
              }
              Belt nearest =
                  context.catalog().belts().stream()
                      .min(
                          Comparator.comparingDouble(
                              (Belt belt) -> Math.abs(belt.pitchMm() - pitch)))
                      .orElse(null);
              if (nearest != null && Math.abs(nearest.pitchMm() / pitch - 1) > 0.002) {
                String path = "axes." + name + ".drive.pitch";
                sink.sourced(
                    path,
                    "found "
                        + n(pitch)
                        + " mm; the nearest is "
                        + nearest.designation()
                        + " with "
                        + n(nearest.pitchMm())
                        + " mm",
                    nearest.source(),
                    Remedy.review("Take " + n(nearest.pitchMm()) + " mm", path, nearest.pitchMm()));
              }
            });
  }
}
