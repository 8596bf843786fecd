package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * What the last build left, as the image reader measured it.
 *
 * @param bytes flash that it fills, bytes
 * @param ramBytes RAM that it claims before it runs, bytes
 * @param address where it starts in the part's address space
 */
public record BuiltImage(
    Long bytes,
    Long ramBytes,
    Long address,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final BuiltImage NONE = new BuiltImage(null, null, null, null);

  public BuiltImage {
    more = Kept.map(more);
  }
}
