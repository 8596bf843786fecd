package dev.gantrywright.app.record;

import dev.gantrywright.prove.PressEffect;
import dev.gantrywright.prove.Strip;
import dev.gantrywright.prove.TouchReport;
import dev.gantrywright.prove.TouchResult;
import dev.gantrywright.prove.Trace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a touch test found, with the trace that it was read from. */
final class TouchFacts {
  /** Newest changes kept of each endstop; a bouncing one must not fill the disk. */
  static final int MOST_CHANGES = 400;

  private TouchFacts() {}

  static ObjectNode of(String port, TouchReport report, Optional<Trace> trace) {
    ObjectNode facts = Facts.object();
    ProofFacts.port(facts, port);
    facts.put("passed", report.passed());
    ArrayNode results = facts.putArray("results");
    report.results().forEach(result -> result(results.addObject(), result));
    ObjectNode rest = facts.putObject("rest");
    new TreeMap<>(report.rest()).forEach(rest::put);
    ObjectNode matrix = facts.putObject("matrix");
    for (TouchResult result : report.results()) {
      Map<String, PressEffect> row = report.matrix().get(result.end());
      if (row != null) {
        row(matrix.putObject(result.end()), row);
      }
    }
    trace.ifPresent(seen -> trace(facts.putObject("trace"), seen));
    return facts;
  }

  private static void result(ObjectNode row, TouchResult result) {
    row.put("end", result.end());
    row.put("verdict", ProofFacts.word(result.verdict()));
    row.put("phrase", result.verdict().phrase());
    row.put("other", result.other());
    row.put("longestBounceMs", result.longestBounceNanos() / 1e6);
    row.put("advice", result.advice());
  }

  private static void row(ObjectNode into, Map<String, PressEffect> row) {
    new TreeMap<>(row)
        .forEach(
            (end, effect) -> {
              ObjectNode cell = into.putObject(end);
              cell.put("held", effect.held());
              cell.put("changes", effect.changes());
              cell.put("noisy", effect.noisy());
            });
  }

  private static void trace(ObjectNode facts, Trace trace) {
    long first = trace.firstNanos();
    facts.put("seconds", seconds(trace.lastNanos() - first));
    facts.put("samples", trace.samples());
    ArrayNode strips = facts.putArray("strips");
    for (Strip strip : trace.strips()) {
      ObjectNode row = strips.addObject();
      row.put("end", strip.end());
      row.put("initially", strip.initially());
      List<dev.gantrywright.prove.Transition> all = strip.transitions();
      int from = Math.max(0, all.size() - MOST_CHANGES);
      row.put("leftOut", from);
      ArrayNode changes = row.putArray("changes");
      all.subList(from, all.size()).forEach(change -> changes.add(seconds(change.nanos() - first)));
      if (from > 0) {
        row.put("initially", all.get(from - 1).triggered());
      }
    }
  }

  /** To the tenth of a millisecond: no line is asked faster. */
  private static double seconds(long nanos) {
    return Math.round(nanos / 1e5) / 1e4;
  }
}
