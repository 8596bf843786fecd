package dev.gantrywright.rules.drivers;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The driver IC cannot have this address. */
@Rule(
    id = "GW-D013",
    slug = "address-out-of-range",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The driver IC cannot have this address",
    reads = {"axes.*.driver.address", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, UART addresses")
public final class AddressOutOfRange implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              Integer address = axis.driver().address();
              if (ic != null
                  && address != null
                  && ic.uartAddresses() > 0
                  && (address < 0 || address >= ic.uartAddresses())) {
                sink.sourced(
                    "axes." + name + ".driver.address",
                    "found "
                        + address
                        + "; the "
                        + ic.ic()
                        + " has addresses 0 to "
                        + (ic.uartAddresses() - 1),
                    ic.source(),
                    Remedy.show("read the levels of its address pins"));
              }
            });
  }
}
