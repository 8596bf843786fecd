package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.physics.StepRate;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;

/** Top speed asks for more steps a second than the processor can make. */
@Rule(
    id = "GW-M004",
    slug = "step-rate-exceeds-processor",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Top speed asks for more steps a second than the processor can make",
    reads = {"axes.*.stepsPerMm", "axes.*.maxSpeed", "board.mcu"},
    source =
        "400 clock cycles a step on 8-bit parts, 250 on 32-bit parts (common practice, no published source); clock from the part's data sheet")
public final class StepRateExceedsProcessor implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.mcu().isEmpty()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    int cycles = mcu.core().equals("AVR") ? 400 : 250;
    double clock = context.sheet().map(BoardSheet::clockHz).orElse((double) mcu.clockHz());
    double most = clock / cycles;
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (!known(axis.stepsPerMm(), axis.maxSpeed())) {
                return;
              }
              double hertz = StepRate.hertz(axis.stepsPerMm(), axis.maxSpeed());
              if (hertz > most) {
                double speed = Math.floor(StepRate.speedMmPerSecond(most, axis.stepsPerMm()));
                String path = "axes." + name + ".maxSpeed";
                sink.report(
                    path,
                    "found "
                        + n(axis.maxSpeed())
                        + " mm/s x "
                        + n(axis.stepsPerMm())
                        + " steps/mm: "
                        + Shown.hertz(hertz)
                        + ", "
                        + n(Math.floor(clock / hertz))
                        + " clock cycles a step; about "
                        + cycles
                        + " are needed, "
                        + Shown.hertz(most),
                    Remedy.review("Limit to " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
