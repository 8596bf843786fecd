package dev.gantrywright.load;

/** Loading could not go on. The message is one clear line: what, where, what to do. */
public final class LoadProblem extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why. */
  public enum Kind {
    SOURCE,
    TARGET,
    NAME,
    SPACE,
    WRITE,
    /** What came back from the card is not what was written. */
    DIFFERENT,
    GONE
  }

  private final Kind kind;

  LoadProblem(Kind kind, String line) {
    super(line);
    this.kind = kind;
  }

  LoadProblem(Kind kind, String line, Throwable cause) {
    super(line, cause);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }
}
