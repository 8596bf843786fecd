package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import java.util.List;
import java.util.Optional;

/** Follows one printer through its edits; serves one thread at a time, off the view's. */
public interface Inspection {
  /** Notes on the printer as it stands now, worst first; a note that stays is the same one. */
  List<MarginNote> inspect(OpenPrinter printer);

  /**
   * What a note of the last inspection was found on, as a waiver keeps it. Any thread may ask.
   *
   * @param key {@link MarginNote#key}
   */
  Optional<String> evidence(String key);
}
