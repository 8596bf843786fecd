package dev.gantrywright.ui.state;

import dev.gantrywright.load.CopyStep;
import java.util.List;
import java.util.Optional;

/**
 * How the load stands.
 *
 * @param kind what goes on
 * @param step the step of a copy in hand, or the last one reached
 * @param words result or reason, one line
 * @param lines what a flashing command has printed last
 */
public record LoadState(Kind kind, Optional<CopyStep> step, String words, List<String> lines) {
  /** What goes on. */
  public enum Kind {
    IDLE,
    COPYING,
    /** A flashing command runs. */
    FLASHING,
    COPIED,
    /** A flashing command ended well; the board has not been asked yet. */
    FLASHED,
    LOADED,
    UNSURE,
    FAILED
  }

  /** Whether something goes on that must not be begun twice. */
  public boolean busy() {
    return kind == Kind.COPYING || kind == Kind.FLASHING;
  }

  static LoadState idle() {
    return of(Kind.IDLE, "");
  }

  static LoadState of(Kind kind, String words) {
    return new LoadState(kind, Optional.empty(), words, List.of());
  }

  static LoadState at(CopyStep step) {
    return new LoadState(Kind.COPYING, Optional.of(step), step.words(), List.of());
  }
}
