package dev.gantrywright.ui.names;

/**
 * Whether the folder has been read for learning.
 *
 * @param share of the reading that is done, 0 to 1
 * @param words what went wrong; empty where nothing did
 */
record NamesState(Kind kind, double share, String words) {
  enum Kind {
    /** Not read yet. */
    IDLE,
    /** The profile names no folder that could be read. */
    NO_FOLDER,
    LEARNING,
    READY,
    STOPPED,
    FAILED
  }

  static NamesState of(Kind kind) {
    return new NamesState(kind, 0, "");
  }
}
