package dev.gantrywright.cli;

import dev.gantrywright.app.ManyProofs;
import dev.gantrywright.app.ManyProofs.Outcome;
import dev.gantrywright.app.fleet.PortList;
import dev.gantrywright.prove.Check;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Proves a list of machines and says of each what came of it. */
final class FleetProof {
  private static final double NANOS = 1e9;

  private final CommandSpec spec;
  private final boolean json;
  private final HistoryOption history;

  FleetProof(CommandSpec spec, boolean json, HistoryOption history) {
    this.spec = spec;
    this.json = json;
    this.history = history;
  }

  int run(List<PortList.Entry> entries, ManyProofs proofs) {
    Map<ManyProofs.Board, Path> files = new IdentityHashMap<>();
    entries.forEach(entry -> files.put(entry.board(), entry.file()));
    long began = System.nanoTime();
    try {
      List<Outcome> outcomes =
          proofs.run(
              entries.stream().map(PortList.Entry::board).toList(),
              outcome -> heard(outcome, files.get(outcome.board())),
              Thread.currentThread()::isInterrupted);
      double seconds = (System.nanoTime() - began) / NANOS;
      if (json) {
        document(outcomes, seconds);
      } else {
        summary(outcomes, seconds, proofs.atOnce());
      }
      if (outcomes.stream().anyMatch(outcome -> outcome.report() == null)) {
        return ExitStatus.DEVICE;
      }
      return outcomes.stream().allMatch(Outcome::passed) ? ExitStatus.FINE : ExitStatus.FINDINGS;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new DeviceProblem("interrupted", stopped);
    }
  }

  /** Each as it ends, so that a slow one holds no other's line back. */
  private void heard(Outcome outcome, Path file) {
    if (outcome.report() != null) {
      history.keep(
          spec, file, past -> past.proved(outcome.board().profile(), outcome.report(), Set.of()));
    }
    if (!json) {
      Printed.out(spec).println(word(outcome) + "  " + outcome.board().name() + says(outcome));
      Printed.out(spec).flush();
    }
  }

  private static String word(Outcome outcome) {
    if (outcome.report() == null) {
      return "no answer";
    }
    return outcome.passed() ? "proven   " : "differs  ";
  }

  private static String says(Outcome outcome) {
    if (outcome.report() == null) {
      return " - " + outcome.trouble();
    }
    String differ =
        outcome.report().checks().stream()
            .filter(check -> check.verdict() == Check.Verdict.FAIL)
            .map(check -> check.path() + " " + ProofText.compared(check))
            .collect(Collectors.joining("; "));
    return differ.isEmpty() ? "" : " - " + differ;
  }

  private void summary(List<Outcome> outcomes, double seconds, int atOnce) {
    long proven = outcomes.stream().filter(Outcome::passed).count();
    long silent = outcomes.stream().filter(outcome -> outcome.report() == null).count();
    Printed.out(spec)
        .println(
            String.format(
                Locale.ROOT,
                "%s: %d proven, %d different, %d without an answer; %.1f s, at most %d at once",
                Counted.of(outcomes.size(), "machine"),
                proven,
                outcomes.size() - proven - silent,
                silent,
                seconds,
                atOnce));
  }

  private static long heapMegabytes() {
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
  }

  private void document(List<Outcome> outcomes, double seconds) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("seconds", seconds);
    document.put("heapMegabytes", heapMegabytes());
    document.put("proven", outcomes.stream().filter(Outcome::passed).count());
    document.put("machines", outcomes.stream().map(FleetProof::row).toList());
    Printed.json(spec, document);
  }

  private static Map<String, Object> row(Outcome outcome) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("machine", outcome.board().name());
    row.put("port", outcome.board().port().toString());
    row.put("passed", outcome.passed());
    row.put("trouble", outcome.trouble());
    row.put("seconds", outcome.took().toNanos() / NANOS);
    row.put("proof", outcome.report() == null ? null : ProofJson.of(outcome.report()));
    return row;
  }
}
