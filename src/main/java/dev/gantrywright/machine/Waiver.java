package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * A finding set aside with a reason. Keyed by finding id and place, {@code GW-S003@serial.baud}.
 *
 * @param reason why, in the user's words
 * @param evidence the finding's evidence when it was waived; the finding returns when it changes
 * @param date ISO date
 */
public record Waiver(
    String reason,
    String evidence,
    String date,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public Waiver {
    more = Kept.map(more);
  }
}
