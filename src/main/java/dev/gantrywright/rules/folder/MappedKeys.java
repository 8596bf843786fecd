package dev.gantrywright.rules.folder;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IniDocument;
import dev.gantrywright.header.Setting;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.Spelled;
import dev.gantrywright.names.Spelling;
import dev.gantrywright.rules.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** The fields that the name map leads to keys of build settings, looked up in the folder once. */
record MappedKeys(List<Key> all) {
  /**
   * One field.
   *
   * @param path the field
   * @param value the profile's value; null where it states none
   * @param document the file that holds the key; null where none does
   * @param found the key; null where the folder has none
   * @param text what stands for the field now; null where the folder has none
   */
  record Key(
      String path,
      NameEntry entry,
      JsonNode value,
      IniDocument document,
      IniDocument.Entry found,
      String text,
      FirmwareFolder folder) {
    /** The key with its section, as people read it. */
    String name() {
      return entry.section() == null || entry.section().isEmpty()
          ? entry.macro()
          : "[" + entry.section() + "] " + entry.macro();
    }

    /** Where the key stands. */
    String at() {
      return document.path() + ":" + found.line();
    }

    /**
     * Whether the whole value of the key is the field's, so that its comment speaks of the field.
     */
    boolean alone() {
      return found != null && found.value().equals(text);
    }

    /** Every key of that name in its section, in file order. */
    List<IniDocument.Entry> alike() {
      return document.entries().stream()
          .filter(e -> e.section().equals(found.section()) && e.key().equals(found.key()))
          .toList();
    }

    /** How the value would be written; null where there is no value or no key. */
    Spelled spelled() {
      return value == null || text == null || entry.element() != null
          ? null
          : new Spelling(path, entry, name -> folder.live(name).map(Setting::value))
              .spell(value, text);
    }
  }

  /** Those that the profile gives a value for. */
  static Stream<Key> stated(Context context) {
    return context.once(MappedKeys.class, MappedKeys::look).all().stream()
        .filter(key -> key.value() != null);
  }

  /** Whether an entry leads to build settings rather than to a header. */
  static boolean inBuildSettings(FirmwareFolder folder, NameEntry entry) {
    if (entry.macro() == null) {
      return false;
    }
    return entry.section() != null
        || (folder.named(entry.macro()).isEmpty() && FolderPlace.find(folder, entry).isPresent());
  }

  private static MappedKeys look(Context context) {
    List<Key> keys = new ArrayList<>();
    if (context.names().isPresent() && context.boardFolder().isPresent()) {
      FirmwareFolder folder = context.boardFolder().get();
      context
          .names()
          .get()
          .fields()
          .forEach(
              (path, entry) -> {
                if (inBuildSettings(folder, entry)) {
                  keys.add(
                      key(
                          path,
                          entry,
                          ProfileValues.get(context.profile(), path).orElse(null),
                          folder));
                }
              });
    }
    return new MappedKeys(List.copyOf(keys));
  }

  private static Key key(String path, NameEntry entry, JsonNode value, FirmwareFolder folder) {
    FolderPlace place = FolderPlace.find(folder, entry).orElse(null);
    if (place instanceof FolderPlace.InKey in) {
      return new Key(path, entry, value, in.document(), in.entry(), in.entry().value(), folder);
    }
    if (place instanceof FolderPlace.InFlags in) {
      return new Key(path, entry, value, in.document(), in.entry(), in.value(), folder);
    }
    return new Key(path, entry, value, null, null, null, folder);
  }
}
