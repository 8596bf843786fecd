package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The filament feed is faster than filament can be pushed. */
@Rule(
    id = "GW-M033",
    slug = "feed-implausibly-fast",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "The filament feed is faster than filament can be pushed",
    reads = {"axes.*.maxSpeed", "axes.*.drive.kind"},
    source = "retractions of 20 to 120 mm/s (common practice, no published source)")
public final class FeedImplausiblyFast implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (FeedAxis.named(name) && axis.maxSpeed() != null && axis.maxSpeed() > 150) {
                sink.report(
                    "axes." + name + ".maxSpeed",
                    "found " + n(axis.maxSpeed()) + " mm/s; 20 to 120 mm/s are usual");
              }
            });
  }
}
