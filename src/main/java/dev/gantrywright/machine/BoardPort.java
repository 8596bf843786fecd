package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One serial port of a board.
 *
 * @param index the firmware's index
 * @param label as printed on the board
 * @param routed whether it reaches a connector
 * @param uart number of the UART on the microcontroller; null for native USB
 * @param clockHz clock of that UART's divider, Hz; null for the part's usual one
 * @param pins transmit and receive pin
 */
public record BoardPort(
    Integer index,
    PortKind kind,
    String label,
    Boolean routed,
    Integer uart,
    Double clockHz,
    List<String> pins,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public BoardPort {
    pins = Kept.list(pins);
    more = Kept.map(more);
  }
}
