package dev.gantrywright.ui.state;

import dev.gantrywright.app.BuildJob;
import java.util.List;
import java.util.Optional;

/**
 * How a build stands.
 *
 * @param kind what goes on
 * @param words result or reason, one line
 * @param lines the end of its output
 * @param share done, 0 to 1; negative where nobody can tell
 * @param done what came of it
 */
public record BuildState(
    Kind kind, String words, List<String> lines, double share, Optional<BuildJob.Done> done) {
  /** What goes on. */
  public enum Kind {
    IDLE,
    RUNNING,
    BUILT,
    /** Built, but the image must not be loaded. */
    REFUSED,
    FAILED,
    CANCELLED
  }

  static BuildState idle() {
    return new BuildState(Kind.IDLE, "", List.of(), 0, Optional.empty());
  }

  static BuildState running(List<String> lines, double share) {
    return new BuildState(Kind.RUNNING, Texts.of("build.running"), lines, share, Optional.empty());
  }

  static BuildState ended(Kind kind, String words) {
    return new BuildState(kind, words, List.of(), 0, Optional.empty());
  }
}
