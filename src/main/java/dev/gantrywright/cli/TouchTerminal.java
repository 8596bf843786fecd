package dev.gantrywright.cli;

import dev.gantrywright.prove.TouchReport;
import dev.gantrywright.prove.TouchResult;
import dev.gantrywright.prove.TouchTest;
import dev.gantrywright.prove.Trace;
import dev.gantrywright.prove.Watch;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The touch test in a terminal. */
final class TouchTerminal {
  private static final String CAUTION =
      "CAUTION: heaters cold, motors off; use a stick where the axis could catch a finger.";
  private static final double HERTZ = 100;
  private static final long HOLD_MILLIS = 500;
  private static final long LONGEST_END_SECONDS = 5;

  private TouchTerminal() {}

  /** What was found, and the states meanwhile. */
  record Tested(TouchReport report, Trace trace) {}

  /**
   * Runs it to the end, or until Ctrl-C.
   *
   * @param out null to say nothing
   * @param err where it is said that it was broken off
   * @throws CtrlC.Said where the key was pressed: half a test judges nothing
   */
  static Tested run(MachineLine machine, PrintWriter out, PrintWriter err)
      throws InterruptedException {
    try (LineEnd end = new LineEnd(machine, LONGEST_END_SECONDS)) {
      Tested tested = run(machine, out, end);
      if (end.pressed()) {
        err.println("touch test broken off; no endstop is judged, nothing of it is kept");
        err.flush();
        throw new CtrlC.Said();
      }
      tested.report().results().forEach(result -> say(out, line(result)));
      return tested;
    }
  }

  private static Tested run(MachineLine machine, PrintWriter out, LineEnd end)
      throws InterruptedException {
    List<String> ends = new ArrayList<>();
    Map<String, Boolean> inverted = new HashMap<>();
    machine
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Boolean.TRUE.equals(endstop.fitted())) {
                ends.add(name);
                inverted.put(name, Boolean.TRUE.equals(endstop.inverted()));
              }
            });
    TouchTest test = new TouchTest(ends, inverted, TouchTest.Patience.standard());
    Trace trace = new Trace();
    say(out, CAUTION);
    try (Watch watch =
        Watch.start(
            machine.session(),
            machine.profile().endstops().keySet(),
            HERTZ,
            sample -> {
              trace.add(sample);
              test.add(sample);
            },
            System::nanoTime,
            Thread::new)) {
      follow(machine, test, out, watch, end);
    }
    return new Tested(test.report(), trace);
  }

  private static void follow(
      MachineLine machine, TouchTest test, PrintWriter out, Watch watch, LineEnd end)
      throws InterruptedException {
    String pressed = "";
    String prompt = "";
    while (!test.done() && watch != null && !end.pressed()) {
      if (!test.prompt().equals(prompt)) {
        prompt = test.prompt();
        say(out, prompt);
      }
      String asked = test.asked().orElse(pressed);
      if (!asked.equals(pressed)) {
        pressed = asked;
        machine.practiceTouch(asked, true);
        hold(test, asked, end);
        machine.practiceTouch(asked, false);
      }
      Thread.sleep(10);
    }
  }

  /** As a hand does: a moment, and until it is told to let go, however slow the computer is. */
  private static void hold(TouchTest test, String asked, LineEnd end) throws InterruptedException {
    Thread.sleep(HOLD_MILLIS);
    while (test.asked().filter(asked::equals).isPresent() && !test.pressed() && !end.pressed()) {
      Thread.sleep(10);
    }
  }

  private static String line(TouchResult r) {
    return "  "
        + r.end()
        + " "
        + r.verdict().phrase()
        + (r.other().isEmpty() ? "" : " (" + r.other() + ")")
        + (r.advice().isEmpty() ? "" : ": " + r.advice());
  }

  private static void say(PrintWriter out, String line) {
    if (out != null) {
      out.println(line);
      out.flush();
    }
  }

  static List<Map<String, Object>> json(TouchReport report) {
    return report.results().stream()
        .map(
            r -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("end", r.end());
              row.put("verdict", r.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
              row.put("other", r.other());
              row.put("longestBounceMs", r.longestBounceNanos() / 1e6);
              row.put("advice", r.advice());
              return row;
            })
        .toList();
  }
}
