package dev.gantrywright.rules.thermal;

import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.physics.AdcDivider;
import dev.gantrywright.physics.Ntc;
import dev.gantrywright.physics.PlatinumRtd;

/** A sensor under its pull-up, as the converter of the board sees it. */
record SensorReading(Sensor sensor, double pullUpOhms, int bits) {
  double ohms(double celsius) {
    return switch (sensor.kind()) {
      case NTC -> Ntc.ohms(sensor.ohms(), sensor.betaKelvin().orElseThrow(), celsius);
      case PLATINUM -> PlatinumRtd.ohms(sensor.ohms(), celsius);
    };
  }

  double celsius(double ohms) {
    return switch (sensor.kind()) {
      case NTC -> Ntc.celsius(sensor.ohms(), sensor.betaKelvin().orElseThrow(), ohms);
      case PLATINUM -> PlatinumRtd.celsius(sensor.ohms(), ohms);
    };
  }

  /** How many degrees one count of the converter is worth at a temperature. */
  double kelvinPerCount(double celsius) {
    double below = AdcDivider.counts(ohms(celsius - 0.5), pullUpOhms, bits);
    double above = AdcDivider.counts(ohms(celsius + 0.5), pullUpOhms, bits);
    return 1 / Math.abs(above - below);
  }

  /** What the firmware shows at a true temperature where it reckons with another pull-up. */
  double shownWith(double assumedPullUpOhms, double trueCelsius) {
    double ratio = ohms(trueCelsius) / (ohms(trueCelsius) + pullUpOhms);
    return celsius(assumedPullUpOhms * ratio / (1 - ratio));
  }
}
