package dev.gantrywright.app.record;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Path;

/**
 * The states of one printer by the words that a user types: {@code now} is the profile as it
 * stands, anything else an event of its history.
 *
 * @param file the profile
 */
public record States(Path file, Path history, Timeline timeline) {
  /** The word for the profile as it stands. */
  public static final String NOW = "now";

  public static States of(Path file, PrinterHistory history) throws IOException {
    return new States(file, history.file().file(), history.timeline());
  }

  /** There is no such state; the message is the one line to show. */
  public static final class NoState extends Exception {
    private static final long serialVersionUID = 1L;

    NoState(String line) {
      super(line);
    }
  }

  /** The event that is meant. */
  public Event event(String given) throws NoState {
    return timeline
        .find(given)
        .orElseThrow(
            () ->
                new NoState(
                    history
                        + ": no event '"
                        + given
                        + "'; "
                        + (timeline.events().isEmpty()
                            ? "it holds none yet"
                            : "give a number from 1 to "
                                + timeline.events().size()
                                + ", or the first digits of an id")));
  }

  /** The profile as it was, or is. */
  public PrinterProfile profile(String given) throws NoState, ProfileProblem {
    if (given.equals(NOW)) {
      return ProfileStore.read(file);
    }
    Event event = event(given);
    return timeline
        .state(event)
        .orElseThrow(
            () ->
                new NoState(
                    history
                        + ": event "
                        + event.number()
                        + " names a state whose text the file does not hold"))
        .profile();
  }
}
