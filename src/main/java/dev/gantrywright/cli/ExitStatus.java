package dev.gantrywright.cli;

/** What a process status says. */
public final class ExitStatus {
  public static final int FINE = 0;

  /** Findings of level error, or a comparison that failed. */
  public static final int FINDINGS = 1;

  /** Bad usage or unreadable input. */
  public static final int USAGE = 2;

  /** A device or the file system failed. */
  public static final int DEVICE = 3;

  private ExitStatus() {}
}
