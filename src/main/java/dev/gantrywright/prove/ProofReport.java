package dev.gantrywright.prove;

import java.util.List;

/**
 * The outcome of a proof.
 *
 * @param printer name of the profile
 * @param port the line that was used
 * @param identity what the firmware said of itself, line by line
 * @param checks every comparison
 * @param explanation why stored settings can differ from the build, and the way back; empty where
 *     none differs
 * @param linesToSend what would bring the stored settings to the profile, one command each, on an
 *     armed line; empty where none differs
 */
public record ProofReport(
    String printer,
    String port,
    List<String> identity,
    List<Check> checks,
    String explanation,
    List<String> linesToSend) {
  public ProofReport {
    identity = List.copyOf(identity);
    checks = List.copyOf(checks);
    linesToSend = List.copyOf(linesToSend);
  }

  /** True when at least one endstop or setting was compared and none differs. */
  public boolean passed() {
    return count(Check.Verdict.FAIL) == 0
        && checks.stream()
            .anyMatch(
                c -> c.verdict() == Check.Verdict.PASS && c.family() != Check.Family.IDENTITY);
  }

  public long count(Check.Verdict verdict) {
    return checks.stream().filter(c -> c.verdict() == verdict).count();
  }
}
