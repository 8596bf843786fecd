package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A mains heater's metal is not bonded to protective earth. */
@Rule(
    id = "GW-P007",
    slug = "mains-heater-not-earthed",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A mains heater's metal is not bonded to protective earth",
    reads = {"heaters.*.earthed", "heaters.*.volts"},
    source = "IEC 61140, protection class I; IEC 60335-1 clause 27 (memory); local rules go first")
public final class MainsHeaterNotEarthed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.volts() != null
                  && heater.volts() >= Context.MAINS_VOLTS
                  && !Boolean.TRUE.equals(heater.earthed())) {
                sink.report(
                    "heaters." + name + ".earthed",
                    "found "
                        + (heater.earthed() == null ? "nothing stated" : "false")
                        + " at "
                        + n(heater.volts())
                        + " V: a fault of the insulation makes bed and frame live",
                    Remedy.show(
                        "have the bed plate bonded to protective earth by someone licensed, and a residual-current device in the feed"));
              }
            });
  }
}
