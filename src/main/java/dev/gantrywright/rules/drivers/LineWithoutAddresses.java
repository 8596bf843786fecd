package dev.gantrywright.rules.drivers;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;

/** Drivers that have no address share one UART line. */
@Rule(
    id = "GW-D024",
    slug = "line-without-addresses",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Drivers that have no address share one UART line",
    reads = {"axes.*.driver.ic", "axes.*.driver.socket"},
    source = "the driver IC's data sheet, UART addresses")
public final class LineWithoutAddresses implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, String> first = new LinkedHashMap<>();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              String line = context.socket(name, axis).map(DriverSocket::uart).orElse(null);
              if (line == null || ic == null || ic.uartAddresses() != 1) {
                return;
              }
              String other = first.putIfAbsent(line, name);
              if (other != null) {
                sink.sourced(
                    "axes." + name + ".driver.ic",
                    "found "
                        + ic.ic()
                        + " on "
                        + line
                        + ", where the driver of "
                        + other
                        + " listens as well; this IC has no address pins",
                    ic.source(),
                    Remedy.show(
                        "give each of them a line of its own, or fit drivers that have addresses"));
              }
            });
  }
}
