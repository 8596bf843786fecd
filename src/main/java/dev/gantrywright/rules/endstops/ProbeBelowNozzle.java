package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The probe triggers only after the nozzle has reached the bed. */
@Rule(
    id = "GW-E022",
    slug = "probe-below-nozzle",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The probe triggers only after the nozzle has reached the bed",
    reads = {"endstops.*.probe", "endstops.*.probeOffset", "endstops.*.fitted"},
    source = "geometry: a negative offset puts the bed above the nozzle's point")
public final class ProbeBelowNozzle implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Boolean.TRUE.equals(endstop.probe())
                  && endstop.probeOffset() != null
                  && endstop.probeOffset() < 0) {
                sink.report(
                    "endstops." + name + ".probeOffset",
                    "found "
                        + n(endstop.probeOffset())
                        + " mm: the nozzle would be "
                        + n(-endstop.probeOffset())
                        + " mm inside the bed when the probe triggers",
                    Remedy.show(
                        "turn the sign round if your firmware counts the other way, or mount the probe lower"));
              }
            });
  }
}
