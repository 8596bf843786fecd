package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Comparator;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Only the UART sets this number of microsteps, and no line reaches the driver. */
@Rule(
    id = "GW-D025",
    slug = "microsteps-need-line",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "Only the UART sets this number of microsteps, and no line reaches the driver",
    reads = {"axes.*.driver.microsteps", "axes.*.driver.ic", "axes.*.driver.socket"},
    source = "the driver IC's data sheet, table of the mode pins")
public final class MicrostepsNeedLine implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              DriverSocket socket = context.socket(name, axis).orElse(null);
              Integer micro = axis.driver().microsteps();
              if (!known(ic, socket, micro)
                  || socket.uart() != null
                  || socket.microsteps() != null
                  || !ic.logic().equals("uart")) {
                return;
              }
              SortedSet<Integer> pins = new TreeSet<>(ic.pinMicrosteps().values());
              if (pins.isEmpty() || pins.contains(micro) || !ic.microsteps().contains(micro)) {
                return;
              }
              String path = "axes." + name + ".driver.microsteps";
              sink.sourced(
                  path,
                  "found "
                      + micro
                      + "; by its pins "
                      + ic.pinNames()
                      + " the "
                      + ic.ic()
                      + " makes "
                      + pins.stream().map(String::valueOf).collect(Collectors.joining(", ")),
                  ic.source(),
                  Remedy.review("Take " + nearest(pins, micro), path, nearest(pins, micro)));
            });
  }

  /** The nearest by ratio. */
  private static int nearest(SortedSet<Integer> pins, int wanted) {
    return pins.stream()
        .min(
            Comparator.comparingDouble(
                (Integer have) -> Math.abs(Math.log((double) have / wanted))))
        .orElseThrow();
  }
}
