package dev.gantrywright.ui;

import com.sun.javafx.scene.SceneHelper;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TextField;

/**
 * From a keystroke, at any moment of the toolkit's beat, to findings and plan of that text on the
 * screen: once with the margin of Describe in view, once with the lines of Write.
 */
final class KeystrokeBenchmark {
  private static final int KEYSTROKES = 1000;

  /** Somebody who works on a profile has typed some keys before. */
  private static final int WARM_UP = 150;

  private static final int CONTROLS = 400;
  private static final long CONTROL_NANOSECONDS = 5_000_000;

  private final Random chance = new Random(7);
  private final PrinterDesk desk;
  private final Scene scene;
  private final KeystrokeParts parts;
  private final List<Double> inEdit = new ArrayList<>();
  private final List<Double> shown = new ArrayList<>();
  private final List<Double> painted = new ArrayList<>();
  private final List<Double> withBeat = new ArrayList<>();
  private boolean typed;
  private boolean forced;
  private boolean counts;
  private CompletableFuture<Void> done = new CompletableFuture<>();

  private KeystrokeBenchmark(WorkbenchWindow window, KeystrokeParts parts) {
    this.parts = parts;
    desk = window.printer().orElseThrow();
    scene = window.scene();
    desk.judged().listen(judged -> arrived());
    desk.planned().listen(planned -> arrived());
    scene.addPostLayoutPulseListener(this::pulsed);
    parts.watch(scene);
  }

  static void run(Path data) throws Exception {
    CompletableFuture<WorkbenchWindow> opened = new CompletableFuture<>();
    KeystrokeParts parts = new KeystrokeParts();
    Surroundings around = parts.watched(Surroundings.in(data, data.resolve("workshop")));
    Platform.startup(() -> opened.complete(WindowBenchmark.open(around)));
    WorkbenchWindow window = opened.get();
    fx(() -> window.open(data.resolve("workshop/heron.printer.json")));
    until(() -> window.printer().map(d -> d.planned().get().revision() >= 0).orElse(false));
    CompletableFuture<KeystrokeBenchmark> made = new CompletableFuture<>();
    fx(() -> made.complete(new KeystrokeBenchmark(window, parts)));
    made.get().measure();
    System.exit(0);
  }

  private void measure() throws Exception {
    Figures.report("settings in the folder", desk.opened().get().folder().settings().size());
    fx(() -> desk.part().set("axes.x"));
    until(() -> scene.lookup("#edit-axes-x-stepsPerMm") != null);
    // Found once: a user's key goes to the field that has the keyboard, nobody looks for it.
    CompletableFuture<TextField> found = new CompletableFuture<>();
    fx(() -> found.complete((TextField) scene.lookup("#edit-axes-x-stepsPerMm")));
    TextField field = found.get();
    fx(field::requestFocus);
    series("Describe", field::setText);
    fx(() -> desk.stage().set(Stage.WRITE));
    until(() -> scene.lookup("#diff") != null);
    series("Write", text -> desk.values().edit("axes.x.stepsPerMm", Double.valueOf(text)));
    control();
  }

  private interface Typing {
    void type(String text);
  }

  private void series(String where, Typing typing) throws Exception {
    inEdit.clear();
    shown.clear();
    withBeat.clear();
    painted.clear();
    parts.forget();
    for (int i = 0; i < WARM_UP + KEYSTROKES; i++) {
      String text = i % 2 == 0 ? "80" : "8" + (1 + i % 9);
      CompletableFuture<Void> wait = new CompletableFuture<>();
      boolean pulseAtOnce = i / 2 % 2 == 0;
      boolean measured = i >= WARM_UP;
      // Somewhere in the beat, as fast as somebody types.
      Thread.sleep(60 + chance.nextInt(17));
      Platform.runLater(
          () -> {
            done = wait;
            forced = pulseAtOnce;
            counts = measured;
            typed = true;
            parts.typed();
            typing.type(text);
            double took = parts.edited();
            if (measured) {
              inEdit.add(took);
            }
          });
      wait.get(60, TimeUnit.SECONDS);
    }
    // The last of them may still be painting, and adds its figure after that.
    fx(() -> {});
    Figures.report(where + ": the edit itself, ms", inEdit);
    Figures.report(where + ": keystroke to findings and plan laid out, ms", shown);
    Figures.report(where + ": of it the toolkit's thread has a core, ms", parts.ownWork());
    Figures.report(where + ": the same, to the end of painting, ms", painted);
    parts.report(where);
    Figures.report(where + ": the same, at the toolkit's 60 beats a second, ms", withBeat);
  }

  /** What this machine makes of a fixed piece of work, with nothing of the window's under way. */
  private void control() throws Exception {
    List<Double> took = new ArrayList<>();
    for (int i = 0; i < CONTROLS; i++) {
      Thread.sleep(60 + chance.nextInt(17));
      fx(
          () -> {
            long begun = System.nanoTime();
            long until = KeystrokeParts.processor() + CONTROL_NANOSECONDS;
            while (KeystrokeParts.processor() < until) {
              Thread.onSpinWait();
            }
            took.add((System.nanoTime() - begun) / 1e6);
          });
    }
    Figures.report("control: 5 ms of processor on the toolkit's thread take, ms", took);
  }

  private boolean complete() {
    long revision = desk.values().revision();
    return typed
        && desk.judged().get().revision() == revision
        && desk.planned().get().revision() == revision;
  }

  /** Without waiting for the beat: the next pulse at once, its styles, layout and painting. */
  private void arrived() {
    if (forced && complete()) {
      // Once every view has heard of it: those made last are told last.
      Platform.runLater(this::pulseAndPaint);
    }
  }

  private void pulseAndPaint() {
    boolean last = typed;
    com.sun.javafx.tk.Toolkit.getToolkit().firePulse();
    SceneHelper.getPeer(scene).waitForRenderingToComplete();
    if (last && counts) {
      painted.add(parts.sinceTyped());
    }
  }

  private void pulsed() {
    if (complete()) {
      finish(forced ? shown : withBeat);
    }
  }

  private void finish(List<Double> figures) {
    double took = parts.shown(counts && forced);
    if (counts) {
      figures.add(took);
    }
    typed = false;
    done.complete(null);
  }

  private static void fx(Runnable act) {
    CompletableFuture<Void> ran = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          act.run();
          ran.complete(null);
        });
    ran.join();
  }

  static void until(BooleanSupplier reached) throws Exception {
    while (true) {
      CompletableFuture<Boolean> asked = new CompletableFuture<>();
      Platform.runLater(() -> asked.complete(reached.getAsBoolean()));
      if (asked.get()) {
        return;
      }
      Thread.sleep(20);
    }
  }
}
