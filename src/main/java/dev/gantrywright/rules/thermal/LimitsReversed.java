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

/** The lower temperature limit is not below the upper one. */
@Rule(
    id = "GW-T014",
    slug = "limits-reversed",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The lower temperature limit is not below the upper one",
    reads = {"heaters.*.minimum", "heaters.*.maximum"},
    source = "definition")
public final class LimitsReversed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (known(heater.minimum(), heater.maximum())
                  && heater.minimum() >= heater.maximum()) {
                sink.report(
                    "heaters." + name + ".minimum",
                    "found " + n(heater.minimum()) + " to " + n(heater.maximum()) + " °C",
                    Remedy.show("state the lower limit first"));
              }
            });
  }
}
