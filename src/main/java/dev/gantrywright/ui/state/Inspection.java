package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import java.util.List;
import java.util.Optional;

/** Follows one printer through its edits; serves one thread at a time, off the view's. */
public interface Inspection {
  /** Remarks on the printer as it stands now, worst first; a remark that stays is the same one. */
  List<Remark> inspect(OpenPrinter printer);

  /**
   * What a remark of the last inspection was found on, as a waiver keeps it. Any thread may ask.
   *
   * @param key {@link Remark#key}
   */
  Optional<String> evidence(String key);
}
