package dev.gantrywright.rules;

import java.util.List;

/** A rule that could not finish, as a finding: the other rules have gone on. */
final class RuleFault {
  /** The id that no rule of a book may bear. */
  static final String ID = "GW-X000";

  private RuleFault() {}

  static Finding of(Rule rule, RuntimeException fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    String at =
        trace.length == 0 ? "" : " at " + trace[0].getFileName() + ":" + trace[0].getLineNumber();
    return new Finding(
        ID,
        "rule-failed",
        Level.WARNING,
        Family.INTERNAL,
        rule.id(),
        "rule " + rule.id(),
        "A rule could not finish; its answer is missing",
        rule.id() + " (" + rule.slug() + ") stopped with " + fault.getClass().getSimpleName() + at,
        "the program itself",
        List.of(Remedy.show("report this with the profile; the other rules have run")),
        "docs/rules/README.md");
  }
}
