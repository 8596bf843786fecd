package dev.gantrywright.ui.state;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lines of a folder that the compiler does not see, or that depend on something unknown. */
public final class FadedLines {
  private final FirmwareFolder folder;
  private final List<FoundSetting> found;
  private final Map<String, Map<Integer, String>> byFile = new HashMap<>();

  /** Walks the folder's settings once; that takes time in a large folder. */
  public FadedLines(FirmwareFolder folder) {
    this.folder = folder;
    List<Setting> settings = List.copyOf(folder.settings());
    this.found = settings.stream().map(FoundSetting::of).toList();
    for (Setting setting : settings) {
      if (setting.state() != State.LIVE) {
        String key = setting.state() == State.DEAD ? "write.dead" : "write.open";
        byFile
            .computeIfAbsent(setting.file(), file -> new HashMap<>())
            .put(setting.line(), Texts.of(key, setting.reason()));
      }
    }
  }

  /** Every setting, in the order of the files. */
  List<FoundSetting> settings() {
    return found;
  }

  /** Whether these are the lines of that folder. */
  boolean of(FirmwareFolder other) {
    return folder == other;
  }

  /** Reasons by line of one file. */
  Map<Integer, String> in(String file) {
    return byFile.getOrDefault(file, Map.of());
  }
}
