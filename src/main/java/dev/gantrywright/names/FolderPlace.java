package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IniDocument;
import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a name map's entry stands in a folder as it is now. */
public sealed interface FolderPlace {
  /**
   * In a header.
   *
   * @param raw the value's text with its comments
   */
  record InHeader(Setting setting, String raw) implements FolderPlace {}

  /** As a key of the build settings. */
  record InKey(IniDocument document, IniDocument.Entry entry) implements FolderPlace {}

  /**
   * As a macro that a key's flags define with {@code -D}.
   *
   * @param start offset of the value within the key's value
   * @param end exclusive
   */
  record InFlags(IniDocument document, IniDocument.Entry entry, int start, int end)
      implements FolderPlace {
    /** The macro's value. */
    public String value() {
      return entry.value().substring(start, end);
    }
  }

  /** Finds the place: a header's setting, a key, or a macro among a key's flags. */
  static Optional<FolderPlace> find(FirmwareFolder folder, NameEntry entry) {
    if (entry.macro() == null) {
      return Optional.empty();
    }
    if (entry.section() == null) {
      Optional<FolderPlace> header = header(folder, entry);
      if (header.isPresent()) {
        return header;
      }
    }
    Optional<FolderPlace> key = key(folder, entry);
    return key.isPresent() ? key : flags(folder, entry);
  }

  private static Optional<FolderPlace> header(FirmwareFolder folder, NameEntry entry) {
    List<Setting> all = folder.named(entry.macro());
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Setting setting = folder.live(entry.macro()).orElseGet(() -> deciding(all, entry));
    return Optional.of(new InHeader(setting, raw(folder, setting)));
  }

  private static Setting deciding(List<Setting> all, NameEntry entry) {
    for (State state : List.of(State.LIVE, State.OPEN)) {
      for (boolean on : new boolean[] {true, false}) {
        for (Setting setting : all) {
          if (setting.state() == state && setting.on() == on) {
            return setting;
          }
        }
      }
    }
    return all.stream()
        .filter(setting -> setting.file().equals(entry.file()))
        .findFirst()
        .orElse(all.get(0));
  }

  private static String raw(FirmwareFolder folder, Setting setting) {
    if (setting.kind() == Setting.Kind.FLAG) {
      return "";
    }
    return folder
        .header(setting.file())
        .map(header -> header.raw(setting.valueSpan()))
        .orElse(setting.value());
  }

  private static Optional<FolderPlace> key(FirmwareFolder folder, NameEntry entry) {
    for (IniDocument document : folder.buildSettings()) {
      for (IniDocument.Entry key : document.entries()) {
        boolean section = entry.section() == null || entry.section().equals(key.section());
        if (section && key.key().equals(entry.macro())) {
          return Optional.of(new InKey(document, key));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<FolderPlace> flags(FirmwareFolder folder, NameEntry entry) {
    for (IniDocument document : folder.buildSettings()) {
      for (IniDocument.Entry key : document.entries()) {
        for (BuildFlags.Define define : BuildFlags.of(key.value())) {
          boolean section = entry.section() == null || entry.section().equals(key.section());
          if (section && define.name().equals(entry.macro())) {
            return Optional.of(new InFlags(document, key, define.start(), define.end()));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The replacement that a name has in the folder; empty where it has none. */
  static Optional<String> replacement(FirmwareFolder folder, String name) {
    return folder
        .live(name)
        .or(() -> folder.named(name).stream().filter(Setting::on).findFirst())
        .map(Setting::value)
        .filter(value -> !value.isEmpty());
  }

  /** The index at each nesting level of a part of a brace list. */
  static List<Integer> path(ListParts list, ListParts.Part part) {
    boolean nested = list.nested();
    List<Integer> path = new ArrayList<>();
    if (nested) {
      path.add(part.row());
    }
    path.add(part.column());
    return path;
  }

  /** The last designator of a nested one: {@code .b} of {@code [X].b}. */
  static String innermost(String designator) {
    int at = Math.max(designator.lastIndexOf('.'), designator.lastIndexOf('['));
    return at < 0 ? designator : designator.substring(at);
  }
}
