package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.stream.Collectors;

/** It is not stated which port the console is on. */
@Rule(
    id = "GW-S014",
    slug = "port-not-stated",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "It is not stated which port the console is on",
    reads = {"serial.port"},
    source = "the board sheet's list of ports")
public final class PortNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.profile().serial().port() == null && context.routedPorts().size() > 1) {
      sink.report(
          "serial.port",
          "none stated; the "
              + context.boardName()
              + " brings out "
              + context.routedPorts().stream()
                  .map(p -> p.index() + " (" + p.label() + ")")
                  .collect(Collectors.joining(", ")),
          Remedy.show("state the index of the port that your cable is in"));
    }
  }
}
