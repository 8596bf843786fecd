package dev.gantrywright.cli;

/** A device or the file system failed: its message is the one line shown; exit status 3. */
public final class DeviceProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public DeviceProblem(String line) {
    super(line);
  }

  public DeviceProblem(String line, Throwable cause) {
    super(line, cause);
  }
}
