package dev.gantrywright.cli;

import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.ProofReport;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A proof as the JSON document that {@code prove} prints. */
final class ProofJson {
  private ProofJson() {}

  static Map<String, Object> of(ProofReport report) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("printer", report.printer());
    document.put("port", report.port());
    document.put("passed", report.passed());
    document.put("identity", report.identity());
    document.put("checks", report.checks().stream().map(ProofJson::check).toList());
    document.put("explanation", report.explanation());
    document.put("linesToSend", report.linesToSend());
    return document;
  }

  private static Map<String, Object> check(Check check) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("family", check.family().name().toLowerCase(Locale.ROOT));
    row.put("path", check.path());
    row.put("verdict", check.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    row.put("expected", check.expected());
    row.put("seen", check.seen());
    row.put("advice", check.advice());
    return row;
  }

  /** Of one width, so that lines of text stand in columns. */
  static String word(Check.Verdict verdict) {
    return List.of("pass  ", "fail  ", "unsure", "absent").get(verdict.ordinal());
  }
}
