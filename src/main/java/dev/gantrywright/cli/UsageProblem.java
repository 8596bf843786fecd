package dev.gantrywright.cli;

/** Bad usage or unreadable input: its message is the one line that the user sees; exit status 2. */
public final class UsageProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public UsageProblem(String line) {
    super(line);
  }

  public UsageProblem(String line, Throwable cause) {
    super(line, cause);
  }
}
