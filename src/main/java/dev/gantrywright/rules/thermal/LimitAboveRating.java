package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The temperature limit is above the rating of the heated part. */
@Rule(
    id = "GW-T004",
    slug = "limit-above-rating",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "The temperature limit is above the rating of the heated part",
    reads = {"heaters.*.maximum", "heaters.*.rated"},
    source = "the maker's rating of the heated part")
public final class LimitAboveRating implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (!known(heater.maximum(), heater.rated()) || heater.maximum() <= heater.rated()) {
                return;
              }
              String path = "heaters." + name + ".maximum";
              double limit = heater.rated() - 10;
              sink.report(
                  path,
                  "found "
                      + n(heater.maximum())
                      + " °C, the "
                      + name
                      + " is rated "
                      + n(heater.rated())
                      + " °C",
                  Remedy.review("Limit to " + n(limit) + " °C", path, limit));
            });
  }
}
