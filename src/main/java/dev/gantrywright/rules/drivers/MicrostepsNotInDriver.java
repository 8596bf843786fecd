package dev.gantrywright.rules.drivers;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Comparator;
import java.util.stream.Collectors;

/** The driver IC does not have this number of microsteps. */
@Rule(
    id = "GW-D008",
    slug = "microsteps-not-in-driver",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The driver IC does not have this number of microsteps",
    reads = {"axes.*.driver.microsteps", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, microstep table")
public final class MicrostepsNotInDriver implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              Integer micro = axis.driver().microsteps();
              if (ic == null || micro == null || ic.microsteps().contains(micro)) {
                return;
              }
              int nearest =
                  ic.microsteps().stream()
                      .min(
                          Comparator.comparingDouble(
                              (Integer have) -> Math.abs(Math.log((double) have / micro))))
                      .orElse(16);
              String path = "axes." + name + ".driver.microsteps";
              sink.sourced(
                  path,
                  "found "
                      + micro
                      + "; the "
                      + ic.ic()
                      + " has "
                      + ic.microsteps().stream()
                          .map(String::valueOf)
                          .collect(Collectors.joining(", ")),
                  ic.source(),
                  Remedy.review("Take " + nearest, path, nearest));
            });
  }
}
