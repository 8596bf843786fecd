package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The travel is much longer than the bed. */
@Rule(
    id = "GW-M023",
    slug = "travel-far-beyond-bed",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The travel is much longer than the bed",
    reads = {"axes.*.travelMin", "axes.*.travelMax", "printing.bedX", "printing.bedY"},
    source =
        "a quarter of the bed and 20 mm more, for parking beside it (common practice, no published source)")
public final class TravelFarBeyondBed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    for (BedTravel travel : BedTravel.of(context)) {
      double most = travel.bed() * 1.25 + 20;
      if (travel.length() > most) {
        sink.report(
            travel.path(),
            travel.words() + "; " + n(most) + " mm are usual at most",
            BedTravel.measure());
      }
    }
  }
}
