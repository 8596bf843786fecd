package dev.gantrywright.rules;

import java.util.Locale;

/** How bad a finding is, worst first, in the words of SARIF. */
public enum Level {
  /** The machine will not work, or will harm itself or somebody. */
  ERROR,
  /** It will work badly, or only by luck. */
  WARNING,
  /** Worth knowing; nothing need change. */
  NOTE;

  private final String word = name().toLowerCase(Locale.ROOT);

  /** As reports and the command line spell it. */
  public String word() {
    return word;
  }
}
