package dev.gantrywright.app;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.ListParts;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.Spelling;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** What a firmware folder says, read back through its name map as profile values. */
public final class FolderValues {
  private FolderValues() {}

  /** Field path to value, for every field of the map that can be read in the folder. */
  public static Map<String, JsonNode> of(FirmwareFolder folder, NameMap names) {
    Map<String, JsonNode> values = new LinkedHashMap<>();
    names
        .fields()
        .forEach(
            (path, entry) ->
                value(folder, path, entry).ifPresent(value -> values.put(path, value)));
    return values;
  }

  private static Optional<JsonNode> value(FirmwareFolder folder, String path, NameEntry entry) {
    Spelling spelling = new Spelling(path, entry, macro -> folder.live(macro).map(Setting::value));
    Optional<FolderPlace> place = FolderPlace.find(folder, entry);
    if (place.isEmpty()) {
      return Optional.empty();
    }
    if (place.get() instanceof FolderPlace.InHeader header) {
      Setting setting = header.setting();
      if (setting.kind() == Setting.Kind.FLAG) {
        return spelling.readSwitch(setting.on());
      }
      return setting.on() ? part(header.raw(), entry).flatMap(spelling::read) : Optional.empty();
    }
    if (place.get() instanceof FolderPlace.InKey key) {
      return part(key.entry().value(), entry).flatMap(spelling::read);
    }
    return spelling.read(((FolderPlace.InFlags) place.get()).value());
  }

  private static Optional<String> part(String text, NameEntry entry) {
    if (entry.element() == null) {
      return Optional.of(text);
    }
    List<ListParts.Part> parts = ListParts.of(text).parts();
    return entry.element() < parts.size()
        ? Optional.of(parts.get(entry.element()).text())
        : Optional.empty();
  }
}
