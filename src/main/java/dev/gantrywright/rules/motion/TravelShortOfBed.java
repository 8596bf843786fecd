package dev.gantrywright.rules.motion;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The travel does not reach the whole bed. */
@Rule(
    id = "GW-M008",
    slug = "travel-short-of-bed",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The travel does not reach the whole bed",
    reads = {"axes.*.travelMin", "axes.*.travelMax", "printing.bedX", "printing.bedY"},
    source = "definition")
public final class TravelShortOfBed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    for (BedTravel travel : BedTravel.of(context)) {
      if (travel.length() > 0 && travel.length() < travel.bed() - 0.5) {
        sink.report(travel.path(), travel.words(), BedTravel.measure());
      }
    }
  }
}
