package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Optional;

/** An interrupt watches an input that has no filter. */
@Rule(
    id = "GW-E024",
    slug = "interrupt-without-filter",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.REVIEW,
    summary = "An interrupt watches an input that has no filter",
    reads = {"endstops.*.interrupt", "endstops.*.pin", "endstops.*.fitted", "endstops.*.sensor"},
    source = "J. Ganssle, A Guide to Debouncing: means near 1.6 ms, most under 6.2 ms (memory)")
public final class InterruptWithoutFilter implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              Optional<BoardInput> in = context.input(endstop);
              if (Levels.fitted(endstop)
                  && !Levels.threeWire(endstop)
                  && Boolean.TRUE.equals(endstop.interrupt())
                  && in.isPresent()
                  && (in.get().filterMicroseconds() == null
                      || in.get().filterMicroseconds() == 0)) {
                String path = "endstops." + name + ".interrupt";
                sink.report(
                    path,
                    "found true at "
                        + endstop.pin()
                        + ", which has no filter: a contact bounces for 1.6 ms on average, and each bounce and each spike raises an interrupt",
                    Remedy.review("Ask the pin again and again instead", path, false));
              }
            });
  }
}
