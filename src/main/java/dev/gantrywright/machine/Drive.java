package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The drive train from motor to travel.
 *
 * @param pitch belt tooth pitch, mm
 * @param teeth teeth of the motor's pulley
 * @param lead travel of the nut for one turn of the screw, mm
 * @param gearDiameter effective diameter of the gripping wheel, mm
 * @param ratio motor turns for one turn of the pulley, screw or wheel; 1 where null
 */
public record Drive(
    DriveKind kind,
    Double pitch,
    Integer teeth,
    Double lead,
    Double gearDiameter,
    Double ratio,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Drive NONE = new Drive(null, null, null, null, null, null, null);

  public Drive {
    more = Kept.map(more);
  }
}
