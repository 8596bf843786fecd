package dev.gantrywright.ui.state;

import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * What was last done with a printer, by the history beside its profile.
 *
 * @param build the last build; empty where there was none
 * @param proof the last proof at the machine or at the practice board; empty where there was none
 */
public record PrinterPast(Optional<Done> build, Optional<Done> proof) {
  /**
   * One thing that was done.
   *
   * @param well whether it came out well
   * @param practice whether the practice board stood for the machine
   */
  public record Done(Instant time, boolean well, boolean practice) {}

  /** Nothing is known of it. */
  public static final PrinterPast NONE = new PrinterPast(Optional.empty(), Optional.empty());

  /** Reads the history beside a profile; one that cannot be read tells nothing here. */
  static PrinterPast beside(Path profile) {
    try {
      Timeline timeline = PrinterHistory.beside(profile).timeline();
      return new PrinterPast(
          timeline.last(EventKind.BUILD).map(event -> done(event, "good")),
          timeline.last(EventKind.PROOF).map(event -> done(event, "passed")));
    } catch (IOException unreadable) {
      return NONE;
    }
  }

  private static Done done(Event event, String well) {
    return new Done(
        event.time(),
        event.facts().path(well).asBoolean(false),
        event.facts().path("practice").asBoolean(false));
  }
}
