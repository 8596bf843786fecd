package dev.gantrywright.ui.state;

import dev.gantrywright.load.CopyStep;
import java.util.Optional;

/**
 * How the copy onto the card stands.
 *
 * @param kind what goes on
 * @param step the step in hand, or the last one reached
 * @param words result or reason, one line
 */
public record LoadState(Kind kind, Optional<CopyStep> step, String words) {
  /** What goes on. */
  public enum Kind {
    IDLE,
    COPYING,
    COPIED,
    LOADED,
    UNSURE,
    FAILED
  }

  static LoadState idle() {
    return new LoadState(Kind.IDLE, Optional.empty(), "");
  }
}
