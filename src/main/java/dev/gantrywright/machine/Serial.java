package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * How the machine talks to its console.
 *
 * @param port the firmware's index of the console's port
 * @param nativeUsb true where the console runs over the microcontroller's own USB
 * @param baud bit/s
 * @param dataBits bits of data in a frame
 * @param secondPort the firmware's index of a second port; null where there is none
 */
public record Serial(
    Integer port,
    Boolean nativeUsb,
    Integer baud,
    Integer dataBits,
    Parity parity,
    Integer secondPort,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Serial NONE = new Serial(null, null, null, null, null, null, null);

  public Serial {
    more = Kept.map(more);
  }
}
