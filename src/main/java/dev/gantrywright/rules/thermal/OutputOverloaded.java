package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.HeaterOutput;
import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater draws more than the board's output is rated for. */
@Rule(
    id = "GW-T007",
    slug = "output-overloaded",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater draws more than the board's output is rated for",
    reads = {"heaters.*.watts", "heaters.*.volts", "heaters.*.output", "heaters.*.relayAmps"},
    source = "I = P / V; the board sheet's outputs")
public final class OutputOverloaded implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              Double most = context.output(heater).map(HeaterOutput::maxAmps).orElse(null);
              if (!known(most, heater.watts(), heater.volts())
                  || heater.volts() <= 0
                  || heater.relayAmps() != null) {
                return;
              }
              double amps = HeaterPower.amps(heater.volts(), heater.watts());
              if (amps > most) {
                sink.report(
                    "heaters." + name + ".watts",
                    "found "
                        + n(heater.watts())
                        + " W at "
                        + n(heater.volts())
                        + " V: "
                        + about(amps)
                        + " A; output "
                        + heater.output()
                        + " is rated "
                        + n(most)
                        + " A",
                    Remedy.show(
                        "switch it through a relay or a switching module made for the current"));
              }
            });
  }
}
