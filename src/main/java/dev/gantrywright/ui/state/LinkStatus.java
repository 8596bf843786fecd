package dev.gantrywright.ui.state;

/**
 * How the line to the machine stands.
 *
 * @param kind none, being opened, answering, or lost
 * @param port what the user calls the line
 * @param words why, and what is tried next
 * @param practice whether it is the practice board
 */
public record LinkStatus(Kind kind, String port, String words, boolean practice) {
  private static final String PRACTICE = "practice:";

  /** How it stands. */
  public enum Kind {
    NONE,
    CONNECTING,
    UP,
    LOST
  }

  public static LinkStatus none() {
    return new LinkStatus(Kind.NONE, "", "", false);
  }

  /** The line as the record names it: a practice board is never taken for a machine there. */
  public String line() {
    return practice ? PRACTICE : port;
  }

  /** Whether a line is open or being opened: then the stop button stands in its corner. */
  public boolean held() {
    return kind != Kind.NONE;
  }
}
