package dev.gantrywright.ui.state;

import java.util.List;

/**
 * What was found in one revision of a printer.
 *
 * @param revision of the profile
 * @param notes what does not fit, worst first
 * @param whole whether all was there; not so while a folder or a board sheet is read that the
 *     profile names anew: what follows from it is not among the notes
 */
public record Judged(long revision, List<MarginNote> notes, boolean whole) {
  public Judged {
    notes = List.copyOf(notes);
  }

  static Judged nothing() {
    return new Judged(-1, List.of(), false);
  }
}
