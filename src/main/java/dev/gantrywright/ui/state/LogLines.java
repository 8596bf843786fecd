package dev.gantrywright.ui.state;

import dev.gantrywright.link.LogEntry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** The newest entries of a line's log as text, oldest first. */
public final class LogLines {
  private LogLines() {}

  /**
   * @param search words that a line must hold, in any case; empty for all
   * @param most how many lines at most: the newest ones
   */
  public static List<String> of(List<LogEntry> entries, String search, int most) {
    String wanted = search.strip().toLowerCase(Locale.ROOT);
    List<String> lines = new ArrayList<>();
    for (int i = entries.size() - 1; i >= 0 && lines.size() < most; i--) {
      String line = entries.get(i).text();
      if (wanted.isEmpty() || line.toLowerCase(Locale.ROOT).contains(wanted)) {
        lines.add(line);
      }
    }
    Collections.reverse(lines);
    return lines;
  }
}
