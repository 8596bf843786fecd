package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The relay is rated for less than the heater draws. */
@Rule(
    id = "GW-P008",
    slug = "relay-too-small",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The relay is rated for less than the heater draws",
    reads = {"heaters.*.relayAmps", "heaters.*.watts", "heaters.*.volts"},
    source =
        "I = P / V; half the printed rating for solid-state relays without a large heat sink (common practice, no published source)")
public final class RelayTooSmall implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (!known(heater.relayAmps(), heater.watts(), heater.volts())
                  || heater.volts() <= 0) {
                return;
              }
              double amps = HeaterPower.amps(heater.volts(), heater.watts());
              if (amps > heater.relayAmps() / 2) {
                sink.report(
                    "heaters." + name + ".relayAmps",
                    "found "
                        + n(heater.relayAmps())
                        + " A for "
                        + about(amps)
                        + " A: "
                        + about(100 * amps / heater.relayAmps())
                        + " % of its rating, 50 % is usual at most",
                    Remedy.show(
                        "fit a relay of at least "
                            + n(Math.ceil(2 * amps))
                            + " A on a heat sink, with the machine unplugged"));
              }
            });
  }
}
