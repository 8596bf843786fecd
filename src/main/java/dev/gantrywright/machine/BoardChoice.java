package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Which controller board the printer carries and how the firmware is told so.
 *
 * @param sheet the board sheet's file, relative to the profile
 * @param constant the name of the firmware folder's constant for this board
 * @param mcu the part on the board, such as {@code STM32F405RG}
 * @param target the build target that makes an image for this board
 */
public record BoardChoice(
    String sheet,
    String constant,
    String mcu,
    String target,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final BoardChoice NONE = new BoardChoice(null, null, null, null, null);

  public BoardChoice {
    more = Kept.map(more);
  }
}
