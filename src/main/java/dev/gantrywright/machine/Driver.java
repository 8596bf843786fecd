package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The motor driver of an axis.
 *
 * @param ic the driver IC, such as {@code TMC2209}
 * @param microsteps microsteps for one full step
 * @param current run current that the firmware sets, A RMS
 * @param senseOhms sense resistor, Ω
 * @param vref reference voltage measured at the driver, V
 * @param address its address on a shared UART
 * @param socket the board's name of the driver socket; null where it bears the axis's own name
 */
public record Driver(
    String ic,
    Integer microsteps,
    Double current,
    Double senseOhms,
    Double vref,
    Integer address,
    String socket,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Driver NONE = new Driver(null, null, null, null, null, null, null, null);

  public Driver {
    more = Kept.map(more);
  }
}
