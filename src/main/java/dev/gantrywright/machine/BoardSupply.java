package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * What the board may be fed with.
 *
 * @param fuseAmps rating of the fuse in the feed, A
 * @param logicVolts level of its inputs and outputs, V
 */
public record BoardSupply(
    Double minVolts,
    Double maxVolts,
    Double fuseAmps,
    Double logicVolts,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final BoardSupply NONE = new BoardSupply(null, null, null, null, null);

  public BoardSupply {
    more = Kept.map(more);
  }
}
