package dev.gantrywright.ui.state;

/**
 * Whether the open firmware folder is the one that the profile names.
 *
 * @param named the folder as the profile names it; empty where it names none
 * @param open the folder that is open, as the profile named it then; empty where none is
 * @param share of the files read, 0 to 1
 * @param words why it could not be read; empty where that is not so
 */
public record FolderState(Kind kind, String named, String open, double share, String words) {
  /** What goes on. */
  public enum Kind {
    /** The open folder is the one that the profile names. */
    CURRENT,
    /** Another one is named; it is read as soon as nobody types. */
    WAITING,
    READING,
    /** The user ended the reading. */
    STOPPED,
    FAILED
  }

  public boolean current() {
    return kind == Kind.CURRENT;
  }
}
