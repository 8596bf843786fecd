package dev.gantrywright.ui.state;

import java.nio.file.Path;

/**
 * How the writing of a patched folder stands.
 *
 * @param kind what goes on
 * @param share of the files written, 0 to 1
 * @param target the folder; null while idle
 * @param words file in hand, result or reason, one line
 */
public record ExportState(Kind kind, double share, Path target, String words) {
  /** What goes on. */
  public enum Kind {
    IDLE,
    WRITING,
    DONE,
    CANCELLED,
    /** The folder is there already and holds something. */
    OCCUPIED,
    FAILED
  }

  static ExportState idle() {
    return new ExportState(Kind.IDLE, 0, null, "");
  }
}
