package dev.gantrywright.app.record;

import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import java.util.List;
import java.util.Optional;

/** Back from a load over the build of the same image to the export before it. */
public final class LoadedExport {
  private LoadedExport() {}

  /**
   * The export from which a loaded image was built; empty where no build on record left that image.
   *
   * @param events all of them, oldest first
   */
  public static Optional<Event> of(List<Event> events, Event load) {
    String image = load.facts().path("sha256").asString("");
    boolean built = false;
    for (int i = load.number() - 2; i >= 0; i--) {
      Event event = events.get(i);
      built |=
          event.is(EventKind.BUILD)
              && !image.isEmpty()
              && event.facts().path("image").path("sha256").asString("").equals(image);
      if (built && event.is(EventKind.EXPORT)) {
        return Optional.of(event);
      }
    }
    return Optional.empty();
  }
}
