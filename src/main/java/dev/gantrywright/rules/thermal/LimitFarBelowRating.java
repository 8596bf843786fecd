package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The temperature limit is far below the rating of the heated part. */
@Rule(
    id = "GW-T022",
    slug = "limit-far-below-rating",
    level = Level.NOTE,
    family = Family.THERMAL,
    summary = "The temperature limit is far below the rating of the heated part",
    reads = {"heaters.*.maximum", "heaters.*.rated"},
    source = "10 to 20 K below the rating (common practice, no published source)")
public final class LimitFarBelowRating implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (known(heater.maximum(), heater.rated())
                  && heater.rated() > 0
                  && heater.maximum() < 0.6 * heater.rated()) {
                sink.report(
                    "heaters." + name + ".maximum",
                    "found "
                        + n(heater.maximum())
                        + " °C, the "
                        + name
                        + " is rated "
                        + n(heater.rated())
                        + " °C: "
                        + about(100 * heater.maximum() / heater.rated())
                        + " % of it; a limit 10 to 20 K below it is usual");
              }
            });
  }
}
