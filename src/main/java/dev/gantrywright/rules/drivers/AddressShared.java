package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;

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

/** Two drivers on one UART have the same address. */
@Rule(
    id = "GW-D012",
    slug = "address-shared",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Two drivers on one UART have the same address",
    reads = {"axes.*.driver.address", "axes.*.driver.socket", "axes.*.driver.ic"},
    source = "TMC2209 data sheet section 4: the slave address tells the drivers on one line apart")
public final class AddressShared implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, String> first = new LinkedHashMap<>();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Integer address = axis.driver().address();
              String line = context.socket(name, axis).map(DriverSocket::uart).orElse(null);
              boolean bus = context.driver(axis).map(ic -> ic.uartAddresses() > 0).orElse(false);
              if (!known(address, line) || !bus) {
                return;
              }
              String other = first.putIfAbsent(line + " " + address, name);
              if (other != null) {
                sink.report(
                    "axes." + name + ".driver.address",
                    "found "
                        + address
                        + " on "
                        + line
                        + ", which the driver of "
                        + other
                        + " has as well",
                    Remedy.show(
                        "set the address pins of one of the two, with the supply disconnected"));
              }
            });
  }
}
