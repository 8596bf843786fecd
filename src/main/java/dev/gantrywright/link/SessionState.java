package dev.gantrywright.link;

/** How a session stands. */
public enum SessionState {
  /** The line is being opened, perhaps again and again. */
  OPENING("opening"),
  /** Open; asking until the board answers. */
  SYNCING("waiting for the board to answer"),
  /** The board answers. */
  UP("connected"),
  /** Given up for the time being, so that another program can use the port. */
  RELEASED("released"),
  /** Over. */
  CLOSED("closed");

  private final String phrase;

  SessionState(String phrase) {
    this.phrase = phrase;
  }

  /** For the user. */
  public String phrase() {
    return phrase;
  }
}
