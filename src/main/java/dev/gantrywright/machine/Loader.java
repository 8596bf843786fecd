package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The board's boot loader.
 *
 * @param offset bytes from the start of flash to the firmware
 * @param bootSection bytes at the end of flash that it occupies, as on AVR parts
 * @param looksFor file name that it takes
 * @param success what it does to that file
 * @param renamedTo the name that it gives
 */
public record Loader(
    Long offset,
    Long bootSection,
    LoaderMedium medium,
    String looksFor,
    SuccessSign success,
    String renamedTo,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Loader NONE = new Loader(null, null, null, null, null, null, null);

  public Loader {
    more = Kept.map(more);
  }
}
