package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Protection against a runaway heater is off. */
@Rule(
    id = "GW-T010",
    slug = "runaway-protection-off",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SAFE,
    summary = "Protection against a runaway heater is off",
    reads = {"heaters.*.protection"},
    source =
        "principle of a second, independent condition to stop heating; IEC 60335-1 clause 19, abnormal operation (memory)")
public final class RunawayProtectionOff implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (Boolean.FALSE.equals(heater.protection())) {
                String path = "heaters." + name + ".protection";
                sink.report(
                    path,
                    "found off: a sensor that slips out of the "
                        + name
                        + " reads cold, and the heater stays on",
                    Remedy.safe("Switch it on", path, true));
              }
            });
  }
}
