package dev.gantrywright.ui.prove;

import dev.gantrywright.app.StepRecord;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;

/**
 * One armed run on a thread of its own. Its readings are kept in a file before anybody is told; a
 * line that is given up, and a program that ends, wait until the heater was switched off.
 */
final class HeaterJob {
  /**
   * How it ended.
   *
   * @param response null where it broke off
   * @param kept file of the readings; null where there is none
   * @param trouble what went wrong; empty where nothing did
   * @param run what was asked for
   * @param stopped whether it was ended by hand
   */
  record Outcome(
      StepResponse response, Path kept, String trouble, ThermalRun run, boolean stopped) {}

  private static final long LONGEST_SECONDS = 10;

  private final ThermalRun run;
  private final LineSession session;
  private final Path profile;
  private final Consumer<List<StepResponse.Point>> growing;
  private final Consumer<Outcome> ended;
  private final List<StepResponse.Point> points = new ArrayList<>();
  private final CountDownLatch over = new CountDownLatch(1);
  private final Thread onExit = new Thread(this::endAndWait, "switch the heater off");
  private volatile boolean stopped;

  /**
   * @param profile beside which the readings are kept
   * @param growing receives the readings so far, on the window's thread
   * @param ended receives the outcome, on the window's thread
   */
  HeaterJob(
      ThermalRun run,
      LineSession session,
      Path profile,
      Consumer<List<StepResponse.Point>> growing,
      Consumer<Outcome> ended) {
    this.run = run;
    this.session = session;
    this.profile = profile;
    this.growing = growing;
    this.ended = ended;
  }

  void start() {
    Runtime.getRuntime().addShutdownHook(onExit);
    Thread thread = new Thread(this::work, "heater run");
    thread.setDaemon(true);
    thread.start();
  }

  void end() {
    stopped = true;
  }

  /** Ends it and waits until the heater was switched off, a bounded time. */
  void endAndWait() {
    stopped = true;
    try {
      boolean inTime = over.await(LONGEST_SECONDS, TimeUnit.SECONDS);
      stopped |= inTime;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void work() {
    Outcome outcome;
    try {
      StepResponse response = run.record(session, System::nanoTime, () -> stopped, this::reading);
      outcome = kept(response);
    } catch (LinkException failed) {
      outcome = new Outcome(null, null, failed.getMessage(), run, stopped);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      outcome = new Outcome(null, null, "interrupted", run, stopped);
    } finally {
      over.countDown();
      forget();
    }
    Outcome told = outcome;
    Platform.runLater(() -> ended.accept(told));
  }

  private void forget() {
    try {
      Runtime.getRuntime().removeShutdownHook(onExit);
    } catch (IllegalStateException e) {
      // The program is going down: the hook is what ended the run.
      return;
    }
  }

  private void reading(StepResponse.Point point) {
    points.add(point);
    List<StepResponse.Point> sofar = List.copyOf(points);
    Platform.runLater(() -> growing.accept(sofar));
  }

  private Outcome kept(StepResponse response) {
    try {
      Path file = StepRecord.keep(profile, run.heater(), response.csv());
      return new Outcome(response, file, "", run, stopped);
    } catch (IOException failed) {
      return new Outcome(response, profile, failed.toString(), run, stopped);
    }
  }
}
