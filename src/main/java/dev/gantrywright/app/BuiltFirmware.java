package dev.gantrywright.app;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.ListParts;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.Spelling;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * What a firmware would be built with, as profile values: the folder's own text, read through the
 * name map. The practice board runs it; so a folder that was not patched proves otherwise than one
 * that was.
 */
public final class BuiltFirmware {
  private BuiltFirmware() {}

  /**
   * Field path to value as text; fields that the folder does not carry, or whose meaning the map
   * does not know, are left out.
   */
  public static Map<String, String> values(FirmwareFolder folder, NameMap map) {
    Map<String, String> values = new LinkedHashMap<>();
    map.fields()
        .forEach(
            (path, entry) -> value(folder, path, entry).ifPresent(v -> values.put(path, shown(v))));
    return values;
  }

  private static Optional<JsonNode> value(FirmwareFolder folder, String path, NameEntry entry) {
    Optional<FolderPlace> place = FolderPlace.find(folder, entry);
    if (place.isEmpty()) {
      return Optional.empty();
    }
    Spelling spelling = new Spelling(path, entry, name -> FolderPlace.replacement(folder, name));
    if (place.get() instanceof FolderPlace.InHeader header) {
      Setting setting = header.setting();
      if (setting.kind() == Setting.Kind.FLAG) {
        return spelling.readSwitch(setting.on());
      }
      return setting.on()
          ? part(header.setting().value(), entry).flatMap(spelling::read)
          : Optional.empty();
    }
    if (place.get() instanceof FolderPlace.InKey key) {
      return part(key.entry().value(), entry).flatMap(spelling::read);
    }
    return place.get() instanceof FolderPlace.InFlags flags
        ? part(flags.value(), entry).flatMap(spelling::read)
        : Optional.empty();
  }

  private static Optional<String> part(String text, NameEntry entry) {
    if (entry.element() == null) {
      return Optional.of(text);
    }
    ListParts list = ListParts.of(text);
    int element = entry.element();
    return element >= 0 && element < list.parts().size()
        ? Optional.of(list.parts().get(element).text())
        : Optional.empty();
  }

  private static String shown(JsonNode value) {
    return value.isString() ? value.asString() : value.toString();
  }
}
