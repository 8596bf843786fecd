package dev.gantrywright.rules.motion;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The filament feed is set to home. */
@Rule(
    id = "GW-M030",
    slug = "feed-axis-homes",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SAFE,
    summary = "The filament feed is set to home",
    reads = {"axes.*.homing.end", "axes.*.drive.kind"},
    source = "definition: a feed has no end position")
public final class FeedAxisHomes implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (FeedAxis.named(name) && axis.homing().end() != null) {
                String path = "axes." + name + ".homing.end";
                sink.report(
                    path,
                    "found " + axis.homing().end().word() + "; a feed has no end to home to",
                    Remedy.safe("Take it out", path, null));
              }
            });
  }
}
