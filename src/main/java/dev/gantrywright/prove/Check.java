package dev.gantrywright.prove;

/**
 * One line of a proof.
 *
 * @param family what it belongs to
 * @param path profile field that it is about; empty where it is about none
 * @param verdict how it came out
 * @param expected what the profile says
 * @param seen what the machine says
 * @param advice what to do; empty where nothing is to be done
 */
public record Check(
    Family family, String path, Verdict verdict, String expected, String seen, String advice) {
  /** What is compared. */
  public enum Family {
    ENDSTOP("endstops at rest"),
    SETTING("stored settings"),
    IDENTITY("identity");

    private final String phrase;

    Family(String phrase) {
      this.phrase = phrase;
    }

    public String phrase() {
      return phrase;
    }
  }

  /** How a comparison came out. */
  public enum Verdict {
    PASS,
    FAIL,
    /** Right so far, but something has to be confirmed by the user. */
    UNSURE,
    /** The machine says nothing about it. */
    NOT_REPORTED
  }
}
