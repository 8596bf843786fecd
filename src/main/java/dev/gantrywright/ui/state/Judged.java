package dev.gantrywright.ui.state;

import java.util.List;

/**
 * What was found in one revision of a printer.
 *
 * @param revision of the profile
 * @param notes what does not fit, worst first
 */
public record Judged(long revision, List<MarginNote> notes) {
  public Judged {
    notes = List.copyOf(notes);
  }

  static Judged nothing() {
    return new Judged(-1, List.of());
  }
}
