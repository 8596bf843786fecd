package dev.gantrywright.ui.state;

import dev.gantrywright.header.Setting;
import java.util.List;
import java.util.Locale;

/**
 * A setting of the folder with the text that a search looks through.
 *
 * @param state in a word: live, dead, open or off
 * @param text name, value, comment, file and state in lower case
 */
public record FoundSetting(Setting setting, String state, String text) {
  static FoundSetting of(Setting setting) {
    String state =
        Texts.of(
            "setting." + (setting.on() ? setting.state().name().toLowerCase(Locale.ROOT) : "off"));
    String text =
        String.join(" ", setting.name(), setting.value(), setting.comment(), setting.file(), state);
    return new FoundSetting(setting, state, text.toLowerCase(Locale.ROOT));
  }

  /** Those that hold every word, in any order and any case. */
  public static List<FoundSetting> matching(List<FoundSetting> all, String words) {
    String[] wanted = words.toLowerCase(Locale.ROOT).strip().split("\\s+");
    return all.stream().filter(each -> each.holds(wanted)).toList();
  }

  private boolean holds(String[] words) {
    for (String word : words) {
      if (!text.contains(word)) {
        return false;
      }
    }
    return true;
  }
}
