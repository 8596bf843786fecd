package dev.gantrywright.ui.state;

import dev.gantrywright.link.LineAssembly;
import dev.gantrywright.link.LogEntry;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;

/**
 * The newest lines of a line's log as text, oldest first. What a read brought is no line: a fast
 * board's holds hundreds, a slow one's half of one.
 */
public final class LogLines {
  /** A row of the log shows no more; to set more in type takes longer than a picture may. */
  private static final int LONGEST = 400;

  private LogLines() {}

  /**
   * @param search words that a line must hold, in any case; empty for all
   * @param most how many lines at most: the newest ones
   */
  public static List<String> of(List<LogEntry> entries, String search, int most) {
    String wanted = search.strip().toLowerCase(Locale.ROOT);
    Deque<LogEntry> lines = new ArrayDeque<>();
    LineAssembly assembly =
        new LineAssembly(
            line -> {
              if (wanted.isEmpty() || line.text().toLowerCase(Locale.ROOT).contains(wanted)) {
                lines.addLast(line);
                if (lines.size() > most) {
                  lines.removeFirst();
                }
              }
            });
    int first = wanted.isEmpty() ? first(entries, most) : 0;
    entries.subList(first, entries.size()).forEach(assembly::add);
    assembly.end();
    return lines.stream().map(LogLines::row).toList();
  }

  /** Where the entries begin that hold the newest lines. */
  private static int first(List<LogEntry> entries, int most) {
    int ends = 0;
    int at = entries.size();
    while (at > 0 && ends <= most) {
      at--;
      for (byte b : entries.get(at).bytes()) {
        ends += b == '\n' ? 1 : 0;
      }
    }
    return at;
  }

  private static String row(LogEntry line) {
    String text = line.text();
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
  }
}
