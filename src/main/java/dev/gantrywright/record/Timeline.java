package dev.gantrywright.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything that a history file says, oldest first.
 *
 * @param unread lines that are no events, with the reason
 * @param setAside torn lines of earlier writes, kept in the file beside it
 */
public record Timeline(List<Event> events, List<UnreadLine> unread, int setAside) {
  /** Fewer digits than this are taken for an event's number. */
  private static final int LEAST_DIGITS = 6;

  public Timeline {
    events = List.copyOf(events);
    unread = List.copyOf(unread);
  }

  /** The newest event of a kind. */
  public Optional<Event> last(EventKind kind) {
    return newestFirst().stream().filter(event -> event.is(kind)).findFirst();
  }

  /** The events, newest first. */
  public List<Event> newestFirst() {
    List<Event> turned = new ArrayList<>(events);
    java.util.Collections.reverse(turned);
    return turned;
  }

  /**
   * The event that is meant by a number, or by the first digits of its id or of its state's
   * fingerprint; of several in one state the newest.
   */
  public Optional<Event> find(String given) {
    String wanted = given.strip();
    if (wanted.length() >= LEAST_DIGITS) {
      Optional<Event> byId =
          newestFirst().stream()
              .filter(event -> event.id().startsWith(wanted) || event.state().startsWith(wanted))
              .findFirst();
      if (byId.isPresent()) {
        return byId;
      }
    }
    return events.stream()
        .filter(event -> Integer.toString(event.number()).equals(wanted))
        .findFirst();
  }

  /** The profile as it was at an event; empty where no line of the file holds that text. */
  public Optional<ProfileState> state(Event event) {
    return events.stream()
        .filter(other -> other.state().equals(event.state()))
        .flatMap(other -> other.text().stream())
        .findFirst()
        .map(text -> new ProfileState(event.state(), text));
  }

  /** Whether a state's text stands in the file. */
  public boolean holds(String sha256) {
    return events.stream()
        .anyMatch(event -> event.state().equals(sha256) && event.text().isPresent());
  }
}
