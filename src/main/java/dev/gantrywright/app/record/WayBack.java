package dev.gantrywright.app.record;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.ProfileState;
import dev.gantrywright.record.StateDifference;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Brings a profile back to a state that its history holds; the state that it leaves is kept too.
 */
public final class WayBack {
  private WayBack() {}

  /**
   * What it did.
   *
   * @param changed the values that differ, before on the left
   */
  public record Done(Event event, List<StateDifference.Row> changed) {
    public Done {
      changed = List.copyOf(changed);
    }
  }

  /**
   * Saves the earlier state as the profile. A present state that the history does not hold goes
   * into it first, so that this step can be taken back.
   *
   * @param to an event of the history
   * @throws ProfileProblem where that state, or the present profile, cannot be read
   * @throws IOException where history or profile cannot be written
   */
  public static Done take(Path file, PrinterHistory history, Event to)
      throws ProfileProblem, IOException {
    Timeline timeline = history.timeline();
    ProfileState state =
        timeline
            .state(to)
            .orElseThrow(
                () ->
                    new IOException(
                        history.file().file()
                            + ": event "
                            + to.number()
                            + " names a state whose text the file does not hold"));
    PrinterProfile before = ProfileStore.read(file);
    PrinterProfile after = state.profile();
    if (!timeline.holds(ProfileState.of(before).sha256())) {
      history.noted(before, "kept before going back to event " + to.number());
    }
    ProfileStore.save(after, file);
    return new Done(history.returned(after, to), StateDifference.of(before, after));
  }
}
