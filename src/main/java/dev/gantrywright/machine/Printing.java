package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * What the machine is used for: the figures against which its limits are judged.
 *
 * @param layerHeight usual layer, mm
 * @param speed usual speed while printing, mm/s
 * @param bedX size of the bed along X, mm
 * @param bedY size of the bed along Y, mm
 */
public record Printing(
    Double layerHeight,
    Double speed,
    Double bedX,
    Double bedY,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Printing NONE = new Printing(null, null, null, null, null);

  public Printing {
    more = Kept.map(more);
  }
}
