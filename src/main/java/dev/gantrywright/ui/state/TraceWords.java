package dev.gantrywright.ui.state;

import dev.gantrywright.prove.EndstopWord;
import dev.gantrywright.prove.Stretch;
import dev.gantrywright.prove.Strip;
import dev.gantrywright.prove.Transition;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the trace shows, in words. Any thread may ask. */
public final class TraceWords {
  /** Changes of one strip that are told one by one; nobody listens to more. */
  private static final int TOLD = 12;

  private final TraceLook look;

  public TraceWords(TraceLook look) {
    this.look = look;
  }

  /**
   * A strip's figures and description.
   *
   * @param changes how often it changed
   * @param bounce how often and how long it bounced
   * @param bounces whether it bounced at all
   * @param told the changes with their times, for those who cannot see them
   */
  public record Told(String changes, String bounce, boolean bounces, String told) {}

  /** What each strip says of what is shown. */
  public List<Told> strips(Stretch shown) {
    return shown.strips().stream().map(this::told).toList();
  }

  private Told told(Strip strip) {
    int count = strip.transitions().size();
    String changes = Texts.of("trace.changes", count);
    String bounce =
        Texts.of("trace.bounce", strip.chatter(), milliseconds(strip.longestBounceNanos()));
    List<Transition> last = strip.transitions().subList(Math.max(0, count - TOLD), count);
    String one =
        last.stream()
            .map(t -> look.time(t.nanos()) + " " + EndstopWord.of(t.triggered()))
            .collect(Collectors.joining(", "));
    boolean seen = strip.first() != Long.MAX_VALUE;
    String first = seen ? EndstopWord.of(strip.initially()) : ContactState.UNKNOWN.word();
    String all =
        Texts.of("trace.strip", PlaceNames.endstop(strip.end()), first, changes, bounce)
            + (count > TOLD ? " " + Texts.of("trace.strip.last", TOLD) : "")
            + (one.isEmpty() ? "" : " " + one + ".");
    return new Told(changes, bounce, strip.chatter() > 0, all);
  }

  /** Two figures at least: a bounce of 0.4 ms is none of 0 ms. */
  private static String milliseconds(long nanos) {
    double ms = nanos / 1e6;
    return String.format(Locale.ROOT, ms < 10 ? "%.1f" : "%.0f", ms);
  }

  /** What each endstop was at a moment. */
  public String at(Stretch kept, long moment) {
    if (kept.inForce(moment) < 0) {
      return Texts.of("trace.notKept", look.time(moment));
    }
    StringBuilder words = new StringBuilder(look.time(moment));
    for (int end = 0; end < kept.ends().size(); end++) {
      words
          .append(end == 0 ? "  " : " · ")
          .append(PlaceNames.endstop(kept.ends().get(end)))
          .append(' ')
          .append(kept.at(end, moment).map(EndstopWord::of).orElse(ContactState.UNKNOWN.word()));
    }
    return words.toString();
  }
}
