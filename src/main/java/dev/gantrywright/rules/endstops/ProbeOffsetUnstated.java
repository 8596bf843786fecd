package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A probe takes the place of the endstop, but its offset is not stated. */
@Rule(
    id = "GW-E009",
    slug = "probe-offset-unstated",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A probe takes the place of the endstop, but its offset is not stated",
    reads = {"endstops.*.probe", "endstops.*.probeOffset", "endstops.*.fitted"},
    source = "common practice, no published source")
public final class ProbeOffsetUnstated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Boolean.TRUE.equals(endstop.probe())
                  && endstop.probeOffset() == null) {
                sink.report(
                    "endstops." + name + ".probeOffset",
                    "none stated: the nozzle stands at an unknown height when the probe triggers",
                    Remedy.show("measure it in steps of 0.1 mm or less and state it"));
              }
            });
  }
}
