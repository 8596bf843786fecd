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
 * @param fuseAmps rating of the fuse between supply and board, A
 * @param wire cross-section of the wires from supply to board, mm²
 * @param wireLength length of those wires, one way, m
 */
public record Supply(
    Double volts,
    Double amps,
    Double fuseAmps,
    Double wire,
    Double wireLength,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Supply NONE = new Supply(null, null, null, null, null, null);

  public Supply {
    more = Kept.map(more);
  }
}
