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

/** The thermal cut-off opens within the heater's working range. */
@Rule(
    id = "GW-P011",
    slug = "cutoff-below-limit",
    level = Level.WARNING,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The thermal cut-off opens within the heater's working range",
    reads = {"heaters.*.cutoff", "heaters.*.maximum", "heaters.*.rated"},
    source = "IEC 60691: holding temperature lies below the rated functioning temperature")
public final class CutoffBelowLimit implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (known(heater.cutoff(), heater.maximum())
                  && heater.cutoff() < heater.maximum() + 10) {
                sink.report(
                    "heaters." + name + ".cutoff",
                    "found "
                        + n(heater.cutoff())
                        + " °C, the firmware allows "
                        + n(heater.maximum())
                        + " °C: at least 10 K apart",
                    Remedy.show("lower the limit or fit a cut-off for a higher temperature"));
              }
            });
  }
}
