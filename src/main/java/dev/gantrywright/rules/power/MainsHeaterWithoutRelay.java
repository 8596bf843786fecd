package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A mains heater has no relay of its own. */
@Rule(
    id = "GW-P009",
    slug = "mains-heater-without-relay",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A mains heater has no relay of its own",
    reads = {"heaters.*.relayAmps", "heaters.*.volts"},
    source = "IEC 61140, separation of mains from extra-low voltage")
public final class MainsHeaterWithoutRelay implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.volts() != null
                  && heater.volts() >= Context.MAINS_VOLTS
                  && heater.relayAmps() == null) {
                sink.report(
                    "heaters." + name + ".relayAmps",
                    "none stated at "
                        + n(heater.volts())
                        + " V: between the board's output and mains there must be a relay with isolation",
                    Remedy.show("have a relay fitted by someone licensed, and state its rating"));
              }
            });
  }
}
