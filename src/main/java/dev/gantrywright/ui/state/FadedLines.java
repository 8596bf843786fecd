package dev.gantrywright.ui.state;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.HeaderDocument;
import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Lines of a folder that the compiler does not see, or that depend on something unknown. */
public final class FadedLines {
  private static final Pattern CONDITIONAL =
      Pattern.compile("[ \\t]*#[ \\t]*(if|ifdef|ifndef|elif|else|endif)\\b");

  private final FirmwareFolder folder;
  private final List<FoundSetting> found;
  private final Map<String, Map<Integer, String>> byFile = new HashMap<>();

  /** Walks the folder's settings once; that takes time in a large folder. */
  public FadedLines(FirmwareFolder folder) {
    this.folder = folder;
    List<Setting> settings = List.copyOf(folder.settings());
    this.found = settings.stream().map(FoundSetting::of).toList();
    Map<String, Set<Integer>> live = new HashMap<>();
    for (Setting setting : settings) {
      if (setting.state() == State.LIVE) {
        live.computeIfAbsent(setting.file(), file -> new HashSet<>()).add(setting.line());
      } else {
        String key = setting.state() == State.DEAD ? "write.dead" : "write.open";
        byFile
            .computeIfAbsent(setting.file(), file -> new HashMap<>())
            .put(setting.line(), Texts.of(key, setting.reason()));
      }
    }
    for (HeaderDocument header : folder.headers()) {
      Map<Integer, String> marked = byFile.get(header.path());
      if (marked != null) {
        fill(header, marked, live.getOrDefault(header.path(), Set.of()));
      }
    }
  }

  /** Between two conditionals every line is seen, or none: comments fade with their settings. */
  private static void fill(HeaderDocument header, Map<Integer, String> marked, Set<Integer> live) {
    String[] lines = new String(header.bytes(), StandardCharsets.ISO_8859_1).split("\\R", -1);
    int first = 1;
    for (int line = 1; line <= lines.length + 1; line++) {
      if (line > lines.length || CONDITIONAL.matcher(lines[line - 1]).lookingAt()) {
        fill(first, line, marked, live);
        first = line + 1;
      }
    }
  }

  private static void fill(int from, int to, Map<Integer, String> marked, Set<Integer> live) {
    String reason = null;
    for (int line = from; line < to; line++) {
      reason = reason == null ? marked.get(line) : reason;
      if (live.contains(line)) {
        return;
      }
    }
    for (int line = from; line < to && reason != null; line++) {
      marked.putIfAbsent(line, reason);
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
