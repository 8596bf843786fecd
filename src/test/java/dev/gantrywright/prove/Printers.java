package dev.gantrywright.prove;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.charset.StandardCharsets;

/** Printer profiles for tests. */
final class Printers {
  private Printers() {}

  static PrinterProfile parse(String json) {
    try {
      return ProfileStore.parse("test", json.getBytes(StandardCharsets.UTF_8));
    } catch (ProfileProblem e) {
      throw new AssertionError(e);
    }
  }

  static PrinterProfile with(PrinterProfile profile, String path, Object value) {
    try {
      return ProfileValues.with(profile, path, value);
    } catch (ProfileProblem e) {
      throw new AssertionError(e);
    }
  }

  /** Two axes, three endstops of which one is not fitted. */
  static PrinterProfile dunlin() {
    return parse(
        """
        {"format": 1, "name": "Dunlin",
         "serial": {"baud": 250000},
         "axes": {
           "x": {"stepsPerMm": 80, "maxSpeed": 200, "acceleration": 1500, "driver": {"current": 0.8}},
           "z": {"stepsPerMm": 400, "maxSpeed": 12, "acceleration": 100}},
         "endstops": {
           "xMin": {"fitted": true, "contact": "NC", "sensor": "switch", "input": "pull-up", "inverted": false},
           "xMax": {"fitted": false},
           "zMin": {"fitted": true, "contact": "NO", "sensor": "npn", "input": "pull-up", "inverted": true}},
         "heaters": {"hotend": {}, "bed": {}}}
        """);
  }
}
