package dev.gantrywright.rules.folder;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.names.ListParts;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.Spelled;
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
 * @param macro the macro in the folder
 * @param text the text that stands for the field now: the whole value or its element of a brace
 *     list; null where the macro is not live or the list has no such element
 * @param spelled how the value would be written there; null where there is no value or no text
 */
record MappedField(
    String path,
    NameEntry entry,
    JsonNode value,
    Macro macro,
    String text,
    Spelled spelled,
    FirmwareFolder folder) {

  /**
   * A macro of the folder.
   *
   * @param settings every definition, in file order
   * @param liveOnes those that the compiler takes
   * @param live the one that decides at the end; null where none is certain
   */
  record Macro(String name, List<Setting> settings, List<Setting> liveOnes, Setting live) {
    static Macro of(FirmwareFolder folder, String name) {
      List<Setting> settings = folder.named(name);
      return new Macro(
          name,
          settings,
          settings.stream().filter(Setting::live).toList(),
          folder.live(name).orElse(null));
    }
  }

  static MappedField of(
      String path, NameEntry entry, JsonNode value, Macro macro, FirmwareFolder folder) {
    String text = text(entry, macro.live());
    Spelled spelled =
        value == null || text == null
            ? null
            : new Spelling(path, entry, name -> folder.live(name).map(Setting::value))
                .spell(value, text);
    return new MappedField(path, entry, value, macro, text, spelled, folder);
  }

  private static String text(NameEntry entry, Setting live) {
    if (live == null || entry.element() == null) {
      return live == null ? null : live.value();
    }
    List<ListParts.Part> parts = ListParts.of(live.value()).parts();
    return entry.element() < parts.size() ? parts.get(entry.element()).text() : null;
  }

  List<Setting> settings() {
    return macro.settings();
  }

  List<Setting> liveOnes() {
    return macro.liveOnes();
  }

  /** The definition that decides at the end; null where none is certain. */
  Setting live() {
    return macro.live();
  }

  /** The reason why the value has no spelling; empty where it has one. */
  Optional<String> unspelled() {
    return spelled instanceof Spelled.Not not ? Optional.of(not.reason()) : Optional.empty();
  }

  /** Where a definition stands. */
  static String at(Setting setting) {
    return setting.file() + ":" + setting.line();
  }

  /** The elements of a brace list, braces flattened. */
  static List<String> parts(String list) {
    String plain = list.replace('{', ' ').replace('}', ' ').strip();
    return plain.isEmpty() ? List.of() : List.of(plain.split("\\s*,\\s*"));
  }
}
