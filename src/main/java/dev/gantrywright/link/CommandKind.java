package dev.gantrywright.link;

/** What a command would do to the machine. */
public enum CommandKind {
  /** Only asks. */
  READING("reads"),
  /** Stops everything at once. */
  STOP("stops"),
  /** Moves an axis, a fan or an output. */
  MOVING("moves or switches an output"),
  /** Heats. */
  HEATING("heats"),
  /** Changes what the machine keeps. */
  WRITING("changes what the machine keeps"),
  /** Not known to this program, so taken for dangerous. */
  UNKNOWN("is not known to be harmless");

  private final String phrase;

  CommandKind(String phrase) {
    this.phrase = phrase;
  }

  /** For a sentence: "M104 …". */
  public String phrase() {
    return phrase;
  }

  /** True when it may be sent to a line that is not armed. */
  public boolean harmless() {
    return this == READING || this == STOP;
  }
}
