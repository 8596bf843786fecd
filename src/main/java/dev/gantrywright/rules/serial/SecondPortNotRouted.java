package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.stream.Collectors;

/** The second port does not reach a connector. */
@Rule(
    id = "GW-S009",
    slug = "second-port-not-routed",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "The second port does not reach a connector",
    reads = {"serial.secondPort"},
    source = "the board sheet's list of ports")
public final class SecondPortNotRouted implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer index = context.profile().serial().secondPort();
    if (index == null || context.sheet().isEmpty() || context.sheet().get().ports().isEmpty()) {
      return;
    }
    if (context.routedPorts().stream().noneMatch(port -> index.equals(port.index()))) {
      sink.report(
          "serial.secondPort",
          "found "
              + index
              + "; the "
              + context.boardName()
              + " brings out "
              + context.routedPorts().stream()
                  .map(p -> p.index() + " (" + p.label() + ")")
                  .collect(Collectors.joining(", ")),
          Remedy.review("Take the second port out", "serial.secondPort", null));
    }
  }
}
