package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The rating leaves little room above the limit. */
@Rule(
    id = "GW-T019",
    slug = "limit-hardly-below-rating",
    level = Level.NOTE,
    family = Family.THERMAL,
    summary = "The rating leaves little room above the limit",
    reads = {"heaters.*.maximum", "heaters.*.rated"},
    source = "overshoot of a controlled heater, 5 to 10 K (common practice, no published source)")
public final class LimitHardlyBelowRating implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (known(heater.maximum(), heater.rated())
                  && heater.maximum() <= heater.rated()
                  && heater.rated() - heater.maximum() < 10) {
                sink.report(
                    "heaters." + name + ".maximum",
                    "found "
                        + n(heater.maximum())
                        + " °C, the "
                        + name
                        + " is rated "
                        + n(heater.rated())
                        + " °C: "
                        + n(heater.rated() - heater.maximum())
                        + " K for overshoot, 5 to 10 K are usual");
              }
            });
  }
}
