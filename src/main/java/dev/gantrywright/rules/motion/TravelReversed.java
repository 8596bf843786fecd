package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The lowest position is not below the highest. */
@Rule(
    id = "GW-M009",
    slug = "travel-reversed",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The lowest position is not below the highest",
    reads = {"axes.*.travelMin", "axes.*.travelMax"},
    source = "definition")
public final class TravelReversed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (known(axis.travelMin(), axis.travelMax())
                  && axis.travelMin() >= axis.travelMax()) {
                sink.report(
                    "axes." + name + ".travelMin",
                    "found " + n(axis.travelMin()) + " to " + n(axis.travelMax()) + " mm",
                    Remedy.show("state the lower end first"));
              }
            });
  }
}
