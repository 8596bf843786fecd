package dev.gantrywright.record;

/**
 * A line of the file that is no event; it stays where it is.
 *
 * @param line in the file, from 1
 * @param torn whether it is the unfinished last line of a write that was cut off
 * @param why one clause
 */
public record UnreadLine(int line, boolean torn, String why) {
  /** As one line for the user, without the file's name. */
  public String shown() {
    return torn
        ? "line " + line + " was cut off while it was written; the events before it are whole"
        : "line " + line + " " + why + "; passed over";
  }
}
