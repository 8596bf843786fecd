package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The thermal cut-off opens only when the heated part is past its rating. */
@Rule(
    id = "GW-P020",
    slug = "cutoff-far-above-rating",
    level = Level.WARNING,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The thermal cut-off opens only when the heated part is past its rating",
    reads = {"heaters.*.cutoff", "heaters.*.rated"},
    source =
        "IEC 60691: a thermal-link opens at its rated functioning temperature, not before; 20 K above the rating (common practice, no published source)")
public final class CutoffFarAboveRating implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (known(heater.cutoff(), heater.rated()) && heater.cutoff() > heater.rated() + 20) {
                sink.report(
                    "heaters." + name + ".cutoff",
                    "found "
                        + n(heater.cutoff())
                        + " °C, the "
                        + name
                        + " is rated "
                        + n(heater.rated())
                        + " °C: at most 20 K above it",
                    Remedy.show("fit a cut-off between the highest setting and the rating"));
              }
            });
  }
}
