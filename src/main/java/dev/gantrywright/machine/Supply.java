package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The power supply.
 *
 * @param volts V
 * @param amps rated current, A
 */
public record Supply(
    Double volts, Double amps, @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Supply NONE = new Supply(null, null, null);

  public Supply {
    more = Kept.map(more);
  }
}
