package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The firmware asks for an interrupt that this pin does not have. */
@Rule(
    id = "GW-E010",
    slug = "interrupt-not-on-pin",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SAFE,
    summary = "The firmware asks for an interrupt that this pin does not have",
    reads = {"endstops.*.interrupt", "endstops.*.pin", "endstops.*.fitted"},
    source = "the board sheet's inputs; the part's data sheet, external interrupts")
public final class InterruptNotOnPin implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Boolean.TRUE.equals(endstop.interrupt())
                  && context
                      .input(endstop)
                      .map(in -> Boolean.FALSE.equals(in.interrupt()))
                      .orElse(false)) {
                String path = "endstops." + name + ".interrupt";
                sink.report(
                    path,
                    "found true; "
                        + endstop.pin()
                        + " ("
                        + context.input(endstop).get().pin()
                        + ") raises none",
                    Remedy.safe("Ask the pin again and again instead", path, false));
              }
            });
  }
}
