package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One switched heater output.
 *
 * @param maxAmps rating, A
 * @param maxVolts rating, V
 */
public record HeaterOutput(
    String pin,
    Double maxAmps,
    Double maxVolts,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public HeaterOutput {
    more = Kept.map(more);
  }
}
