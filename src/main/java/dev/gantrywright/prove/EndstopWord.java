package dev.gantrywright.prove;

/**
 * How an endstop's state is said, everywhere: a machine touches a switch, a hand presses it, and
 * the firmware reads <em>triggered</em> or <em>open</em>.
 */
public final class EndstopWord {
  public static final String TRIGGERED = "triggered";
  public static final String OPEN = "open";

  /** No answer said which. */
  public static final String UNKNOWN = "unknown";

  private EndstopWord() {}

  public static String of(boolean triggered) {
    return triggered ? TRIGGERED : OPEN;
  }
}
