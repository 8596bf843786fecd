package dev.gantrywright.catalog;

import java.util.List;
import java.util.Optional;

/** The temperature sensors that profiles may name. */
public final class Sensors {
  private static final List<Sensor> ALL =
      Row.all("sensors.json", "sensors").stream().map(Sensor::of).toList();

  private Sensors() {}

  /** Every sensor, in the order of the file. */
  public static List<Sensor> all() {
    return ALL;
  }

  /** The sensor with this id, in any case. */
  public static Optional<Sensor> byId(String id) {
    String wanted = id.strip();
    for (Sensor sensor : ALL) {
      if (sensor.id().equalsIgnoreCase(wanted)) {
        return Optional.of(sensor);
      }
    }
    return Optional.empty();
  }
}
