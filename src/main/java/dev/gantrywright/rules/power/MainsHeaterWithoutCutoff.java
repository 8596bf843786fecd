package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A mains heater has no thermal cut-off. */
@Rule(
    id = "GW-P010",
    slug = "mains-heater-without-cutoff",
    level = Level.WARNING,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A mains heater has no thermal cut-off",
    reads = {"heaters.*.cutoff", "heaters.*.volts"},
    source = "IEC 60691, thermal-links; principle of a condition that works without the processor")
public final class MainsHeaterWithoutCutoff implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.volts() != null
                  && heater.volts() >= Context.MAINS_VOLTS
                  && heater.cutoff() == null) {
                sink.report(
                    "heaters." + name + ".cutoff",
                    "none stated at "
                        + n(heater.volts())
                        + " V: a relay that fails closed heats without end",
                    Remedy.show(
                        "have a thermal cut-off fitted on the plate, in series with the heater, above its highest temperature"));
              }
            });
  }
}
