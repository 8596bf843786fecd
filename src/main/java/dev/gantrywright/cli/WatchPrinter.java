package dev.gantrywright.cli;

import dev.gantrywright.prove.EndstopWord;
import dev.gantrywright.prove.Sample;
import dev.gantrywright.prove.Sample.Validity;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/** Prints samples as they come. Called by one thread at a time. */
abstract class WatchPrinter {
  final PrintWriter out;
  final List<String> ends;
  private long start = -1;
  private Validity last = Validity.VALID;

  private WatchPrinter(PrintWriter out, List<String> ends) {
    this.out = out;
    this.ends = ends;
  }

  static WatchPrinter of(WatchVerb.Format format, PrintWriter out, List<String> ends) {
    return switch (format) {
      case text -> new Text(out, ends);
      case csv -> new Csv(out, ends);
      case json -> new Json(out, ends);
    };
  }

  final synchronized void sample(Sample sample) {
    if (start < 0) {
      start = sample.nanos();
    }
    last = sample.validity();
    print(sample, (sample.nanos() - start) / 1e9);
  }

  final synchronized Validity last() {
    return last;
  }

  abstract void print(Sample sample, double seconds);

  synchronized void end() {}

  static String word(Boolean triggered) {
    return triggered == null ? EndstopWord.UNKNOWN : EndstopWord.of(triggered);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }

  private static final class Text extends WatchPrinter {
    private Map<String, Boolean> before = Map.of();
    private Validity validity;
    private long samples;
    private double seconds;

    Text(PrintWriter out, List<String> ends) {
      super(out, ends);
    }

    @Override
    void print(Sample sample, double at) {
      samples++;
      seconds = at;
      if (sample.validity() == validity && sample.states().equals(before)) {
        return;
      }
      StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%10.3f s ", at));
      sample
          .states()
          .forEach(
              (end, triggered) -> row.append("  ").append(end).append(' ').append(word(triggered)));
      if (sample.validity() != Validity.VALID) {
        row.append("  (").append(sample.validity().word()).append(')');
      }
      out.println(row);
      out.flush();
      before = sample.states();
      validity = sample.validity();
    }

    @Override
    synchronized void end() {
      double rate = seconds > 0 ? (samples - 1) / seconds : 0;
      out.println(
          String.format(Locale.ROOT, "%s, %.1f a second", Counted.of(samples, "sample"), rate));
    }
  }

  private static final class Csv extends WatchPrinter {
    Csv(PrintWriter out, List<String> ends) {
      super(out, ends);
      out.println("seconds,latency_ms,state," + heads(ends));
    }

    /** A name that holds a comma or starts a formula is a name no more. */
    private static String heads(List<String> ends) {
      return String.join(",", ends.stream().map(e -> e.replaceAll("[^A-Za-z0-9_]", "_")).toList());
    }

    @Override
    void print(Sample sample, double at) {
      StringBuilder row = new StringBuilder(number(at));
      row.append(',').append(String.format(Locale.ROOT, "%.3f", sample.latencyNanos() / 1e6));
      row.append(',').append(sample.validity().word());
      ends.forEach(end -> row.append(',').append(word(sample.states().get(end))));
      out.println(row);
    }
  }

  private static final class Json extends WatchPrinter {
    private final List<Map<String, Object>> samples = new ArrayList<>();

    Json(PrintWriter out, List<String> ends) {
      super(out, ends);
    }

    @Override
    void print(Sample sample, double at) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("seconds", at);
      row.put("latencyMs", sample.latencyNanos() / 1e6);
      row.put("state", sample.validity().word());
      Map<String, String> states = new LinkedHashMap<>();
      sample.states().forEach((end, triggered) -> states.put(end, word(triggered)));
      row.put("endstops", states);
      samples.add(row);
    }

    @Override
    synchronized void end() {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("endstops", ends);
      document.put("samples", samples);
      out.println(JsonMapper.builder().build().writeValueAsString(document));
    }
  }
}
