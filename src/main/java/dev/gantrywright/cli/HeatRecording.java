package dev.gantrywright.cli;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import java.io.PrintWriter;
import java.util.Locale;

/**
 * One armed run in the terminal. The line is armed for it alone; Ctrl-C ends it, and the port is
 * given up only after the heater was switched off and the readings are kept.
 */
final class HeatRecording implements AutoCloseable {
  private static final long LONGEST_SECONDS = 10;
  private static final double SAY_EVERY_SECONDS = 5;

  private final LineSession session;
  private final ThermalRun run;
  private final PrintWriter out;
  private final LineEnd end;
  private double next;

  HeatRecording(MachineLine machine, ThermalRun run, PrintWriter out) {
    this.session = machine.session();
    this.run = run;
    this.out = out;
    this.end = new LineEnd(machine, LONGEST_SECONDS);
  }

  StepResponse record() throws LinkException, InterruptedException {
    out.println("heating; stay at the machine; Ctrl-C switches the heater off");
    try {
      session.arm();
      return run.record(session, System::nanoTime, end::pressed, this::reading);
    } finally {
      session.disarm();
    }
  }

  boolean pressed() {
    return end.pressed();
  }

  /** All is said and kept: a program that is going down may go. */
  @Override
  public void close() {
    end.close();
  }

  /** Why the run ended, in a few words. */
  String ending(StepResponse response) {
    StepResponse.Point last = response.points().get(response.points().size() - 1);
    if (last.celsius() > run.highestCelsius()) {
      return "the limit was reached";
    }
    return end.pressed() ? "ended by Ctrl-C" : "recorded";
  }

  private void reading(StepResponse.Point point) {
    if (point.seconds() < next) {
      return;
    }
    next = point.seconds() + SAY_EVERY_SECONDS;
    out.println(String.format(Locale.ROOT, "%7.1f s  %.1f °C", point.seconds(), point.celsius()));
    out.flush();
  }
}
