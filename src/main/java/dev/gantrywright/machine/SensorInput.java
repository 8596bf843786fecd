package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One temperature sensor input.
 *
 * @param pullUpOhms fitted resistor, Ω
 * @param bits resolution of the converter
 * @param referenceVolts its reference, V
 */
public record SensorInput(
    String pin,
    Double pullUpOhms,
    Integer bits,
    Double referenceVolts,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public SensorInput {
    more = Kept.map(more);
  }
}
