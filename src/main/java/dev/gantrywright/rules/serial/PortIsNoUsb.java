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

/** Native USB is stated, but the port is a UART. */
@Rule(
    id = "GW-S002",
    slug = "port-is-no-usb",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.SAFE,
    summary = "Native USB is stated, but the port is a UART",
    reads = {"serial.port", "serial.nativeUsb"},
    source = "the board sheet's list of ports")
public final class PortIsNoUsb implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Optional<BoardPort> port = context.port(context.profile().serial().port());
    if (Boolean.TRUE.equals(context.profile().serial().nativeUsb())
        && port.isPresent()
        && port.get().kind() == PortKind.UART) {
      sink.report(
          "serial.nativeUsb",
          "found native USB with port "
              + port.get().index()
              + ", which is UART "
              + port.get().uart()
              + " ("
              + port.get().label()
              + ")",
          Remedy.safe("Port " + port.get().index() + " is a UART", "serial.nativeUsb", false));
    }
  }
}
