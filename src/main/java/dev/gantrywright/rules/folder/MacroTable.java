package dev.gantrywright.rules.folder;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.NameEntry;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;

/** The macros of one folder that were looked up, and each field as it was judged last. */
final class MacroTable {
  private final Map<String, MappedField.Macro> macros = new ConcurrentHashMap<>();
  private final Map<String, MappedField> fields = new ConcurrentHashMap<>();

  MappedField field(String path, NameEntry entry, JsonNode value, FirmwareFolder folder) {
    MappedField known = fields.get(path);
    if (known == null || !Objects.equals(known.value(), value)) {
      MappedField.Macro macro =
          macros.computeIfAbsent(entry.macro(), name -> MappedField.Macro.of(folder, name));
      known = MappedField.of(path, entry, value, macro, folder);
      fields.put(path, known);
    }
    return known;
  }
}
