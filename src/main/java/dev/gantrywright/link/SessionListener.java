package dev.gantrywright.link;

/** Hears of a session, on the thread that owns its line: be short, and never wait there. */
public interface SessionListener {
  /**
   * The state changed, or the same state goes on with news.
   *
   * @param note why, and what is tried next; may be empty
   */
  default void state(SessionState state, String note) {}

  /** A line that answers no command. */
  default void heard(ReceivedLine line) {}

  /** The board restarted; the session is disarmed. */
  default void restarted(String banner) {}
}
