package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.catalog.CurrentRule;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.machine.Driver;
import dev.gantrywright.physics.DriverCurrent;
import java.util.Optional;

/**
 * The current that a trimmed reference voltage gives.
 *
 * @param rmsAmps A RMS
 * @param vrefVolts the voltage that gives it, V
 * @param source the driver IC's data sheet
 */
record VrefCurrent(double rmsAmps, double vrefVolts, String source) {
  /** Empty where a fact is missing or the IC does not take its current from the voltage. */
  static Optional<VrefCurrent> of(Optional<DriverIc> ic, Driver driver) {
    if (ic.isEmpty() || !known(driver.vref(), driver.senseOhms()) || driver.vref() <= 0) {
      return Optional.empty();
    }
    CurrentRule rule = ic.get().current();
    double rms =
        switch (rule.kind()) {
          case VREF ->
              DriverCurrent.rmsOfPeak(
                  DriverCurrent.vrefPeakAmps(driver.vref(), rule.gain(), driver.senseOhms()));
          case SCALE ->
              DriverCurrent.scaledRmsAmps(
                      31, rule.fullScaleVolts(), driver.senseOhms(), rule.internalOhms())
                  * Math.min(1, driver.vref() / rule.vrefMostVolts().orElse(driver.vref()));
          case GLOBAL_SCALE -> 0;
        };
    return rms <= 0
        ? Optional.empty()
        : Optional.of(new VrefCurrent(rms, driver.vref(), ic.get().source()));
  }

  /** The reference voltage for another current; both grow together. */
  double vrefFor(double wantedRmsAmps) {
    return vrefVolts * wantedRmsAmps / rmsAmps;
  }
}
