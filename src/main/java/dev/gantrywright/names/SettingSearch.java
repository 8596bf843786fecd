package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds settings of a folder by what the user types: every word must stand in name or comment. */
public final class SettingSearch {
  /** A setting found; {@code rank} is 0 for the best. */
  public record Found(Setting setting, int rank) {}

  private record Entry(Setting setting, String name, String around) {}

  private final List<Entry> entries = new ArrayList<>();

  /** Reads the folder's settings once; searching is then quick enough for every key stroke. */
  public SettingSearch(FirmwareFolder folder) {
    for (Setting setting : folder.settings()) {
      String around = setting.comment() + " " + setting.section() + " " + setting.file();
      entries.add(new Entry(setting, Folded.text(setting.name()), Folded.text(around)));
    }
  }

  /** The best settings first; all of them, in file order, for a blank text. */
  public List<Found> find(String text, int most) {
    List<String> wanted = Folded.words(text);
    List<Found> found = new ArrayList<>();
    for (Entry entry : entries) {
      int rank = rank(entry, wanted);
      if (rank >= 0) {
        found.add(new Found(entry.setting(), rank));
      }
    }
    found.sort(Comparator.comparingInt(Found::rank));
    return List.copyOf(found.subList(0, Math.min(most, found.size())));
  }

  /** Lower is better; -1 where a word is missing. */
  private static int rank(Entry entry, List<String> wanted) {
    int rank = 0;
    for (String word : wanted) {
      int at = entry.name().indexOf(word);
      if (at == 0) {
        continue;
      }
      if (at > 0) {
        rank += 1;
      } else if (entry.around().contains(word)) {
        rank += 3;
      } else {
        return -1;
      }
    }
    return rank;
  }
}
