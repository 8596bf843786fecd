package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Where the firmware is and how it is built.
 *
 * @param folder firmware folder, relative to the profile
 * @param names name map of that folder, relative to the profile
 * @param command the build command, one word an element; {@code {target}} stands for the build
 *     target
 * @param environment additions to its environment
 * @param artefact pattern of the image that it leaves, relative to the folder
 * @param flash a flashing command of the user's own, one word an element; {@code {file}} stands for
 *     the image
 * @param image what the last build left
 */
public record BuildSettings(
    String folder,
    String names,
    List<String> command,
    Map<String, String> environment,
    String artefact,
    List<String> flash,
    BuiltImage image,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final BuildSettings NONE =
      new BuildSettings(null, null, null, null, null, null, null, null);

  public BuildSettings {
    command = Kept.list(command);
    environment = Kept.map(environment);
    flash = Kept.list(flash);
    image = image == null ? BuiltImage.NONE : image;
    more = Kept.map(more);
  }
}
