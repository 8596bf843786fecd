package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.HeaterOutput;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater's voltage is above the rating of the board's output. */
@Rule(
    id = "GW-T008",
    slug = "output-volts-exceeded",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater's voltage is above the rating of the board's output",
    reads = {"heaters.*.volts", "heaters.*.output", "heaters.*.relayAmps"},
    source = "the board sheet's outputs")
public final class OutputVoltsExceeded implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              Double most = context.output(heater).map(HeaterOutput::maxVolts).orElse(null);
              if (known(most, heater.volts())
                  && heater.relayAmps() == null
                  && heater.volts() > most) {
                boolean mains = heater.volts() >= Context.MAINS_VOLTS;
                sink.report(
                    "heaters." + name + ".volts",
                    "found "
                        + n(heater.volts())
                        + " V; output "
                        + heater.output()
                        + " is rated "
                        + n(most)
                        + " V"
                        + (mains ? ": mains on the board makes the whole machine live" : ""),
                    Remedy.show(
                        mains
                            ? "keep mains off the board; have a relay with isolation fitted by someone licensed"
                            : "use a heater for the board's voltage"));
              }
            });
  }
}
