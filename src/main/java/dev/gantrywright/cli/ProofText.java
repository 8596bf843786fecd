package dev.gantrywright.cli;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.ProofReport;

/** A proof in words, the same in every verb that proves. */
final class ProofText {
  private ProofText() {}

  /**
   * What was expected and what was seen. The unit is that of the profile; what the machine says may
   * be in another.
   */
  static String compared(Check check) {
    String unit =
        check.family() == Check.Family.SETTING && number(check.expected())
            ? Fields.at(check.path()).map(Field::unit).map(u -> " " + u).orElse("")
            : "";
    return "expected " + check.expected() + unit + ", seen " + check.seen();
  }

  /** What came of it, in one line. */
  static String outcome(ProofReport report) {
    if (report.passed()) {
      return "proven: " + agree(report.count(Check.Verdict.PASS));
    }
    return "not proven: " + differ(report);
  }

  /** What compares: 1 comparison agrees, 2 comparisons agree. */
  static String agree(long count) {
    return Counted.of(count, "comparison") + (count == 1 ? " agrees" : " agree");
  }

  /** 1 of 20 comparisons differs; a proof without an answer to compare fails as well. */
  static String differ(ProofReport report) {
    long failed = report.count(Check.Verdict.FAIL);
    return failed == 0
        ? "no endstop and no stored setting could be compared"
        : Counted.differ(failed, report.checks().size());
  }

  private static boolean number(String text) {
    return text.matches("-?[0-9.]+");
  }
}
