package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * How this printer answers: query texts and how its replies are read. Null means the default of the
 * link data file.
 *
 * @param endstopQuery asks for the state of every endstop
 * @param settingsQuery asks for the stored settings
 * @param identityQuery asks who answers
 * @param stop the stop command
 * @param triggeredWords reply words that mean triggered
 * @param openWords reply words that mean open
 * @param endstopNames reported name to axis end
 * @param usb identity of the USB port last used, {@code vendor:product:serial}
 * @param baud rate that the console opens the port with, bit/s; null for the firmware's
 */
public record LinkSettings(
    String endstopQuery,
    String settingsQuery,
    String identityQuery,
    String stop,
    List<String> triggeredWords,
    List<String> openWords,
    Map<String, String> endstopNames,
    String usb,
    Integer baud,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final LinkSettings NONE =
      new LinkSettings(null, null, null, null, null, null, null, null, null, null);

  public LinkSettings {
    triggeredWords = Kept.list(triggeredWords);
    openWords = Kept.list(openWords);
    endstopNames = Kept.map(endstopNames);
    more = Kept.map(more);
  }
}
