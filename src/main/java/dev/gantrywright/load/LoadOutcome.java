package dev.gantrywright.load;

/**
 * What the card tells when it comes back.
 *
 * @param state what is known
 * @param text one sentence for the user
 * @param todo what to do next
 */
public record LoadOutcome(State state, String text, String todo) {
  /** What is known. */
  public enum State {
    LOADED,
    NOT_LOADED,
    /** The card does not settle it. */
    UNSURE
  }
}
