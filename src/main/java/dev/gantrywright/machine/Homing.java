package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Where and how an axis homes.
 *
 * @param end the end that it homes to; null where it does not home
 * @param speed mm/s
 */
public record Homing(
    HomeEnd end, Double speed, @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Homing NONE = new Homing(null, null, null);

  public Homing {
    more = Kept.map(more);
  }
}
