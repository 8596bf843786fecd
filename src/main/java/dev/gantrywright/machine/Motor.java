package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The motor of an axis.
 *
 * @param fullSteps full steps of one turn
 * @param ratedCurrent current for each phase by the motor's data sheet, A RMS
 * @param ohms resistance of one phase, Ω
 * @param millihenries inductance of one phase, mH
 */
public record Motor(
    Integer fullSteps,
    Double ratedCurrent,
    Double ohms,
    Double millihenries,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Motor NONE = new Motor(null, null, null, null, null);

  public Motor {
    more = Kept.map(more);
  }
}
