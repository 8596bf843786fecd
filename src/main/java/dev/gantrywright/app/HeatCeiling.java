package dev.gantrywright.app;

import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.catalog.Sensors;
import dev.gantrywright.machine.Heater;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How hot a heater may be driven with a set power: the lowest of what the profile allows, what the
 * heater's maker rates and what its sensor can read. Above the sensor's range the reading that ends
 * the run cannot be trusted.
 *
 * @param celsius the ceiling, °C
 * @param why whose limit it is, in words
 */
public record HeatCeiling(double celsius, String why) {
  /** The ceiling of a heater; null stands for one that the profile does not describe. */
  public static HeatCeiling of(Heater heater) {
    List<HeatCeiling> limits = new ArrayList<>();
    if (heater != null && heater.maximum() != null) {
      limits.add(new HeatCeiling(heater.maximum(), "the profile allows no more"));
    }
    if (heater != null && heater.rated() != null) {
      limits.add(new HeatCeiling(heater.rated(), "its maker rates it for no more"));
    }
    if (heater != null && heater.sensor() != null) {
      Sensors.byId(heater.sensor())
          .ifPresent(
              sensor ->
                  limits.add(
                      new HeatCeiling(
                          sensor.mostCelsius(),
                          "its sensor, " + sensor.id() + ", is made for no more")));
    }
    return limits.stream()
        .min(Comparator.comparingDouble(HeatCeiling::celsius))
        .orElseGet(HeatCeiling::unknown);
  }

  /** With nothing known: what every sensor of the catalogue can read, each row with its source. */
  private static HeatCeiling unknown() {
    double least = Sensors.all().stream().mapToDouble(Sensor::mostCelsius).min().orElseThrow();
    return new HeatCeiling(
        least,
        "neither its maximum nor its sensor stands in the profile, and not every sensor reads"
            + " further; enter them there");
  }
}
