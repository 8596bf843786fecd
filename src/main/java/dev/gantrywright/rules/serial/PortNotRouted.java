package dev.gantrywright.rules.serial;

import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.machine.PortKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The console's port does not reach a connector. */
@Rule(
    id = "GW-S001",
    slug = "port-not-routed",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "The console's port does not reach a connector",
    reads = {"serial.port", "serial.nativeUsb"},
    source = "the board sheet's list of ports")
public final class PortNotRouted implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer index = context.profile().serial().port();
    if (index == null || context.sheet().isEmpty() || context.sheet().get().ports().isEmpty()) {
      return;
    }
    Optional<BoardPort> port = context.port(index);
    if (port.isPresent() && !Boolean.FALSE.equals(port.get().routed())) {
      return;
    }
    PortKind wanted =
        Boolean.TRUE.equals(context.profile().serial().nativeUsb()) ? PortKind.USB : PortKind.UART;
    List<Remedy> remedies = new ArrayList<>();
    for (BoardPort routed : context.routedPorts()) {
      if (routed.kind() == wanted) {
        remedies.add(
            Remedy.review(
                "Use port " + routed.index() + ", " + routed.label(),
                "serial.port",
                routed.index()));
      }
    }
    if (remedies.isEmpty()) {
      remedies.add(Remedy.show("choose a port that reaches a connector"));
    }
    String what =
        port.map(p -> index + " (" + p.label() + "), which reaches no connector")
            .orElse(index + ", which the board does not have");
    String have =
        context.routedPorts().stream()
            .map(p -> p.index() + " (" + p.label() + ")")
            .collect(Collectors.joining(", "));
    sink.report(
        "serial.port",
        "found " + what + "; the " + context.boardName() + " brings out " + have,
        null,
        remedies);
  }
}
