package dev.gantrywright.rules.folder;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.Spelling;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One profile field with the macro that carries it.
 *
 * @param path the field
 * @param entry what the name map says of it
 * @param value the profile's value; null where it states none
 * @param settings every definition of the macro, in file order
 * @param live the definition that decides at the end; null where none is certain
 * @param folder the folder as it is for this board
 */
record MappedField(
    String path,
    NameEntry entry,
    JsonNode value,
    List<Setting> settings,
    Setting live,
    FirmwareFolder folder) {

  /** Where a definition stands. */
  static String at(Setting setting) {
    return setting.file() + ":" + setting.line();
  }

  List<Setting> liveOnes() {
    return settings.stream().filter(Setting::live).toList();
  }

  /** How the folder spells the field. */
  Spelling spelling() {
    return new Spelling(path, entry, name -> folder.live(name).map(Setting::value));
  }

  /** The text that stands for the field now: the whole value, or its element of a brace list. */
  Optional<String> text() {
    if (live == null) {
      return Optional.empty();
    }
    if (entry.element() == null) {
      return Optional.of(live.value());
    }
    List<String> parts = parts(live.value());
    return entry.element() < parts.size()
        ? Optional.of(parts.get(entry.element()))
        : Optional.empty();
  }

  /** The elements of a brace list, braces flattened. */
  static List<String> parts(String list) {
    String plain = list.replaceAll("[{}]", " ").strip();
    return plain.isEmpty() ? List.of() : List.of(plain.split("\\s*,\\s*"));
  }
}
