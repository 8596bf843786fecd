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
import java.util.Optional;

/** A UART is stated, but the port is the part's own USB. */
@Rule(
    id = "GW-S003",
    slug = "port-is-no-uart",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.SAFE,
    summary = "A UART is stated, but the port is the part's own USB",
    reads = {"serial.port", "serial.nativeUsb"},
    source = "the board sheet's list of ports")
public final class PortIsNoUart implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Optional<BoardPort> port = context.port(context.profile().serial().port());
    if (Boolean.FALSE.equals(context.profile().serial().nativeUsb())
        && port.isPresent()
        && port.get().kind() == PortKind.USB) {
      sink.report(
          "serial.nativeUsb",
          "found a UART with port "
              + port.get().index()
              + ", which is the part's own USB ("
              + port.get().label()
              + ")",
          Remedy.safe("Port " + port.get().index() + " is native USB", "serial.nativeUsb", true));
    }
  }
}
