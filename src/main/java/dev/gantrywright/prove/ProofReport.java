package dev.gantrywright.prove;

import java.util.List;

/**
 * The outcome of a proof.
 *
 * @param printer name of the profile
 * @param port the line that was used
 * @param identity what the firmware said of itself, line by line
 * @param checks every comparison
 */
public record ProofReport(String printer, String port, List<String> identity, List<Check> checks) {
  public ProofReport {
    identity = List.copyOf(identity);
    checks = List.copyOf(checks);
  }

  /** True when at least one endstop or setting was compared and none differs. */
  public boolean passed() {
    return count(Check.Verdict.FAIL) == 0 && count(Check.Verdict.PASS) > 0;
  }

  public long count(Check.Verdict verdict) {
    return checks.stream().filter(c -> c.verdict() == verdict).count();
  }
}
