package dev.gantrywright.app;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.NameMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a firmware would be built with, as the practice board takes it: the folder's own values,
 * read through the name map. So a folder that was not patched proves otherwise than one that was.
 */
public final class BuiltFirmware {
  private BuiltFirmware() {}

  /**
   * Field path to value as text; fields that the folder does not carry, or whose meaning the map
   * does not know, are left out.
   */
  public static Map<String, String> values(FirmwareFolder folder, NameMap map) {
    Map<String, String> values = new LinkedHashMap<>();
    FolderValues.of(folder, map)
        .forEach(
            (path, value) ->
                values.put(path, value.isString() ? value.asString() : value.toString()));
    return values;
  }
}
