package dev.gantrywright.rules.serial;

import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.List;

/** A console port sits on the pins of the drivers' UART. */
@Rule(
    id = "GW-S010",
    slug = "port-shares-driver-uart",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A console port sits on the pins of the drivers' UART",
    reads = {"serial.port", "serial.secondPort", "axes.*.driver.socket"},
    source = "the board sheet's pins")
public final class PortSharesDriverUart implements Check {
  @Override
  public void check(Context context, Sink sink) {
    for (String path : List.of("serial.port", "serial.secondPort")) {
      Integer index =
          path.equals("serial.port")
              ? context.profile().serial().port()
              : context.profile().serial().secondPort();
      BoardPort port = context.port(index).orElse(null);
      if (port == null) {
        continue;
      }
      List<String> axes = new ArrayList<>();
      context
          .profile()
          .axes()
          .forEach(
              (name, axis) ->
                  context
                      .socket(name, axis)
                      .ifPresent(
                          socket -> {
                            if (socket.uart() != null && port.pins().contains(socket.uart())) {
                              axes.add(name);
                            }
                          }));
      if (!axes.isEmpty()) {
        sink.report(
            path,
            "port "
                + index
                + " ("
                + port.label()
                + ") uses "
                + String.join(" and ", port.pins())
                + ", where the drivers of "
                + String.join(", ", axes)
                + " listen",
            Remedy.show("use another port for the console"));
      }
    }
  }
}
