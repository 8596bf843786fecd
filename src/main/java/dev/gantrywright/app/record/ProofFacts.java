package dev.gantrywright.app.record;

import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.ProofReport;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a machine was found to say. */
final class ProofFacts {
  private ProofFacts() {}

  static ObjectNode of(ProofReport report, Set<String> touched) {
    ObjectNode facts = Facts.object();
    port(facts, report.port());
    facts.put("passed", report.passed());
    Facts.texts(facts, "identity", report.identity());
    Facts.texts(facts, "touched", new TreeSet<>(touched).stream().toList());
    ArrayNode checks = facts.putArray("checks");
    report.checks().forEach(check -> check(checks.addObject(), check));
    Facts.put(
        facts,
        "explanation",
        java.util.Optional.of(report.explanation()).filter(text -> !text.isEmpty()));
    Facts.texts(facts, "linesToSend", report.linesToSend());
    return facts;
  }

  /** A practice board proves the description and the firmware's values, never the wiring. */
  static void port(ObjectNode facts, String port) {
    facts.put("port", port);
    facts.put("practice", port.startsWith("practice:"));
  }

  private static void check(ObjectNode row, Check check) {
    row.put("family", word(check.family()));
    row.put("path", check.path());
    row.put("verdict", word(check.verdict()));
    row.put("expected", check.expected());
    row.put("seen", check.seen());
    row.put("advice", check.advice());
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
