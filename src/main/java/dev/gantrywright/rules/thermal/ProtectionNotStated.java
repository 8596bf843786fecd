package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** It is not stated whether runaway protection is on. */
@Rule(
    id = "GW-T020",
    slug = "protection-not-stated",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.SAFE,
    summary = "It is not stated whether runaway protection is on",
    reads = {"heaters.*.protection", "heaters.*.sensor"},
    source = "principle of a second, independent condition to stop heating")
public final class ProtectionNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.protection() == null && heater.sensor() != null) {
                String path = "heaters." + name + ".protection";
                sink.report(
                    path,
                    "none stated: the folder's own default stays, on or off",
                    Remedy.safe("Switch it on", path, true));
              }
            });
  }
}
