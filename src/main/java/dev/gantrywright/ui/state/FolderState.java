package dev.gantrywright.ui.state;

import java.util.Locale;

/**
 * Whether the open firmware folder is the one that the profile names.
 *
 * @param named the folder as the profile names it; empty where it names none
 * @param open the folder that is open, as the profile named it then; empty where none is
 * @param share of the files read, 0 to 1; below 0 while they are still listed
 * @param words how many entries are listed so far, or why it could not be read; else empty
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

  /** Whether what the profile names is being read, or will be as soon as nobody types. */
  public boolean reads() {
    return kind == Kind.WAITING || kind == Kind.READING;
  }

  /** Whether a firmware folder is named that is still to be read. */
  public boolean folderAhead() {
    return reads() && another() && !named.isEmpty();
  }

  /** The kind, as keys of texts spell it. */
  public String word() {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /** Whether another folder is named than the one that is open. */
  public boolean another() {
    return !named.equals(open);
  }
}
