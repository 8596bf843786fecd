package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.HeaterControl;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A hot end is switched hard on and off. */
@Rule(
    id = "GW-T021",
    slug = "bang-bang-on-nozzle",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "A hot end is switched hard on and off",
    reads = {"heaters.*.control", "heaters.*.maximum"},
    source =
        "swing of an on-off controller: heating rate times dead time (identity); some K in hot ends (common practice, no published source)")
public final class BangBangOnNozzle implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.control() == HeaterControl.BANG_BANG
                  && heater.maximum() != null
                  && heater.maximum() > 180) {
                String path = "heaters." + name + ".control";
                sink.report(
                    path,
                    "found bang-bang for a heater of up to "
                        + n(heater.maximum())
                        + " °C: its temperature swings by several degrees",
                    Remedy.review("Use a PID controller", path, "pid"));
              }
            });
  }
}
