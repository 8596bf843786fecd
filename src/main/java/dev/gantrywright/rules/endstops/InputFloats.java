package dev.gantrywright.rules.endstops;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Nothing holds this input while its contact is open. */
@Rule(
    id = "GW-E002",
    slug = "input-floats",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.REVIEW,
    summary = "Nothing holds this input while its contact is open",
    reads = {
      "endstops.*.input",
      "endstops.*.pullUp",
      "endstops.*.fitted",
      "endstops.*.sensor",
      "board.mcu"
    },
    source =
        "identities of contact and pull; IEC 60947-5-2: an open-collector output drives one level only")
public final class InputFloats implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (!Levels.fitted(endstop)
                  || endstop.input() == null
                  || Levels.pull(endstop) != InputPull.NONE) {
                return;
              }
              boolean helps =
                  context.mcu().map(Mcu::pullUp).orElse(false)
                      && endstop.sensor() != SensorKind.PNP;
              sink.report(
                  "endstops." + name + ".input",
                  "found no pull, and the part's own pull-up is off: an open contact leaves the input at any level",
                  helps
                      ? Remedy.review(
                          "Switch the part's own pull-up on", "endstops." + name + ".pullUp", true)
                      : Remedy.show(
                          "fit a resistor of 10 kΩ to the level that the sensor does not drive"));
            });
  }
}
