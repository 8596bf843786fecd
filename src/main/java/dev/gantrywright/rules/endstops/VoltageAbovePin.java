package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Optional;

/** The sensor puts more voltage on the pin than it bears. */
@Rule(
    id = "GW-E004",
    slug = "voltage-above-pin",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The sensor puts more voltage on the pin than it bears",
    reads = {"endstops.*.voltage", "endstops.*.pin", "endstops.*.fitted", "board.mcu"},
    source = "the part's data sheet, absolute maximum ratings; the board sheet's inputs")
public final class VoltageAbovePin implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (!Levels.fitted(endstop) || endstop.voltage() == null) {
                return;
              }
              Optional<Double> bears =
                  context
                      .input(endstop)
                      .map(BoardInput::toleranceVolts)
                      .or(() -> context.mcu().map(Mcu::inputToleranceVolts));
              bears
                  .filter(most -> endstop.voltage() > most)
                  .ifPresent(
                      most ->
                          sink.report(
                              "endstops." + name + ".voltage",
                              "found "
                                  + n(endstop.voltage())
                                  + " V, the pin bears "
                                  + n(most)
                                  + " V: "
                                  + n(endstop.voltage() - most)
                                  + " V too much",
                              Remedy.show(
                                  "do not plug it in; feed the sensor from the board's own "
                                      + context
                                          .logicVolts()
                                          .map(v -> n(v) + " V")
                                          .orElse("logic supply")
                                      + ", or fit an optocoupler or a divider")));
            });
  }
}
