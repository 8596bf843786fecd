package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The lower limit trips in an ordinary room. */
@Rule(
    id = "GW-T012",
    slug = "minimum-above-room",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "The lower limit trips in an ordinary room",
    reads = {"heaters.*.minimum"},
    source = "rooms of 15 °C and less occur (common practice, no published source)")
public final class MinimumAboveRoom implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.minimum() != null && heater.minimum() > 14) {
                String path = "heaters." + name + ".minimum";
                sink.report(
                    path,
                    "found "
                        + n(heater.minimum())
                        + " °C: a sensor in a cool room is taken for broken",
                    Remedy.review("Take 5 °C", path, 5));
              }
            });
  }
}
