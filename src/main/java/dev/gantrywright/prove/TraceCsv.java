package dev.gantrywright.prove;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A trace as a table after RFC 4180. A row for each moment at which something changed, fell silent,
 * answered again or was marked, and for the first and the last sample: {@code seconds} since the
 * first sample, one column an endstop ({@code triggered}, {@code open} or {@code unknown}), {@code
 * mark}.
 */
public final class TraceCsv {
  private TraceCsv() {}

  /**
   * @param strips of the same samples, in the order of the columns
   * @param first the first sample's moment, on the monotonic clock
   * @param last the last one's
   */
  public static String of(List<Strip> strips, List<Trace.Mark> marks, long first, long last) {
    StringBuilder csv = new StringBuilder("seconds");
    strips.forEach(s -> csv.append(',').append(quoted(s.end())));
    csv.append(",mark\n");
    Map<Long, String> texts = new TreeMap<>();
    marks.forEach(m -> texts.merge(m.nanos(), m.text(), (a, b) -> a + "; " + b));
    for (long moment : moments(strips, texts, first, last)) {
      csv.append(String.format(Locale.ROOT, "%.6f", (moment - first) / 1e9));
      strips.forEach(s -> csv.append(',').append(s.wordAt(moment)));
      csv.append(',').append(quoted(texts.getOrDefault(moment, ""))).append('\n');
    }
    return csv.toString();
  }

  private static TreeSet<Long> moments(
      List<Strip> strips, Map<Long, String> texts, long first, long last) {
    TreeSet<Long> moments = new TreeSet<>(texts.keySet());
    for (Strip s : strips) {
      s.transitions().forEach(t -> moments.add(t.nanos()));
      for (Strip.Blank blank : s.blanks()) {
        moments.add(blank.from());
        moments.add(Math.min(blank.until(), last));
      }
      if (s.first() <= last) {
        moments.add(s.first());
      }
    }
    if (!strips.isEmpty()) {
      moments.add(first);
      moments.add(last);
    }
    return moments;
  }

  private static String quoted(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
