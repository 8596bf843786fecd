package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One driver socket.
 *
 * @param uart pin or UART that reaches the driver; null where it has none
 * @param microsteps microsteps that the jumpers select; null where the firmware sets them
 * @param senseOhms sense resistor on the board, Ω; null where it sits on the driver module
 * @param maxAmps rating, A RMS
 */
public record DriverSocket(
    String step,
    String direction,
    String enable,
    String uart,
    Integer microsteps,
    Double senseOhms,
    Double maxAmps,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public DriverSocket {
    more = Kept.map(more);
  }
}
