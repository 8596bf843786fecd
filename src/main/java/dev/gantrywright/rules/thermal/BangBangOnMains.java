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

/** A mains bed is switched hard on and off. */
@Rule(
    id = "GW-T015",
    slug = "bang-bang-on-mains",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "A mains bed is switched hard on and off",
    reads = {"heaters.*.control", "heaters.*.volts"},
    source = "IEC 61000-3-3, flicker; relay makers' contact life at full load (memory)")
public final class BangBangOnMains implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.control() == HeaterControl.BANG_BANG
                  && heater.volts() != null
                  && heater.volts() >= Context.MAINS_VOLTS) {
                String path = "heaters." + name + ".control";
                sink.report(
                    path,
                    "found bang-bang at "
                        + n(heater.volts())
                        + " V: full power in long bursts, a swing of several degrees about the target",
                    Remedy.review("Use a PID controller with a slow cycle", path, "pid"));
              }
            });
  }
}
