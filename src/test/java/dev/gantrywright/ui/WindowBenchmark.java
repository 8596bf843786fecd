package dev.gantrywright.ui;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Trace;
import dev.gantrywright.ui.theme.Mode;
import dev.gantrywright.ui.theme.Tones;
import dev.gantrywright.ui.theme.Typefaces;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleConsumer;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.util.Duration;

/**
 * Measures the window: {@code keystroke}, {@code trace}, {@code window} or {@code bare}. See {@code
 * docs/benchmarks/window.sh}.
 */
public final class WindowBenchmark {
  private static final int SETTINGS = 10_000;
  private static final int KEYSTROKES = 120;
  private static final int WARM_UP = 30;

  private WindowBenchmark() {}

  public static void main(String[] args) throws Exception {
    long start = ProcessHandle.current().info().startInstant().orElseThrow().toEpochMilli();
    switch (args[0]) {
      case "keystroke" -> Platform.startup(WindowBenchmark::keystroke);
      case "trace" -> Platform.startup(WindowBenchmark::trace);
      case "window" -> Platform.startup(() -> window(start));
      default -> Platform.startup(() -> bare(start));
    }
    Thread.currentThread().join();
  }

  private static Path folder() {
    try {
      Path data = Files.createTempDirectory("window-benchmark");
      Path workshop = data.resolve("workshop");
      DemoWorkshop.unpack(workshop);
      StringBuilder header = new StringBuilder("#ifndef BENCH_H\n#define BENCH_H\n");
      for (int i = 0; i < SETTINGS; i++) {
        header
            .append(i % 7 == 0 ? "//#define FEATHER_" : "#define FEATHER_")
            .append(i)
            .append("   ")
            .append(i * 3)
            .append("  // mm\n");
      }
      Files.writeString(
          workshop.resolve("rookery-2.3/config/feathers.h"), header.append("#endif\n"));
      return data;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static WorkbenchWindow open(Path data) {
    Typefaces.load();
    Stage stage = new Stage();
    WorkbenchWindow window =
        new WorkbenchWindow(stage, Surroundings.in(data, data.resolve("workshop")));
    stage.setWidth(1280);
    stage.setHeight(720);
    window.show();
    return window;
  }

  /** From setting the text to the first pulse after findings and plan of that text are shown. */
  private static void keystroke() {
    Path data = folder();
    WorkbenchWindow window = open(data);
    window.open(data.resolve("workshop/heron.printer.json"));
    new AnimationTimer() {
      private final List<Double> total = new ArrayList<>();
      private final List<Double> inText = new ArrayList<>();
      private final List<Double> pulses = new ArrayList<>();
      private TextField field;
      private long typedAt;
      private long before;
      private int typed;

      @Override
      public void handle(long now) {
        if (window.printer().isEmpty()) {
          return;
        }
        PrinterDesk desk = window.printer().get();
        if (field == null) {
          desk.part().set("axes.x");
          field = (TextField) window.scene().lookup("#edit-axes-x-stepsPerMm");
          if (field != null) {
            field.requestFocus();
          }
          return;
        }
        if (before != 0) {
          pulses.add((now - before) / 1e6);
        }
        before = now;
        if (desk.judged().get().revision() != desk.values().revision()) {
          return;
        }
        if (typedAt != 0) {
          if (typed > WARM_UP) {
            total.add((System.nanoTime() - typedAt) / 1e6);
          }
          typedAt = 0;
          return;
        }
        if (typed++ == WARM_UP + KEYSTROKES) {
          stop();
          report("settings in the folder", desk.opened().get().folder().settings().size());
          report("keystroke to findings and plan shown, ms", total);
          report("of it in the edit itself, ms", inText);
          report("pulse to pulse meanwhile, ms", pulses);
          System.exit(0);
        }
        typedAt = System.nanoTime();
        field.setText(typed % 2 == 0 ? "80" : "8" + typed % 10);
        if (typed > WARM_UP) {
          inText.add((System.nanoTime() - typedAt) / 1e6);
        }
      }
    }.start();
  }

  /** Twelve strips at 50 Hz, 20 s of them, painted on every pulse. */
  private static void trace() {
    Typefaces.load();
    List<String> ends = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      ends.add("end" + i);
    }
    Trace trace = new Trace(ends);
    var strips = new dev.gantrywright.ui.draw.TraceStrips(System::nanoTime, 20);
    strips.show(trace, Tones.of(Mode.LIGHT));
    Stage stage = new Stage();
    stage.setScene(new Scene(new StackPane(strips), 1180, 600));
    stage.show();
    long begin = System.nanoTime();
    for (int i = 0; i < 1000; i++) {
      add(trace, begin - (1000 - i) * 20_000_000L, i);
    }
    List<Double> work = new ArrayList<>();
    new AnimationTimer() {
      private int added;

      @Override
      public void handle(long now) {
        for (; added < (System.nanoTime() - begin) / 20_000_000L; added++) {
          add(trace, begin + added * 20_000_000L, added);
        }
        long start = System.nanoTime();
        strips.paint();
        work.add((System.nanoTime() - start) / 1e6);
        if (System.nanoTime() - begin > 15_000_000_000L) {
          stop();
          report(
              "painting 12 strips at 50 Hz, ms of the toolkit's thread",
              work.subList(60, work.size()));
          report("pulses", work.size());
          System.exit(0);
        }
      }
    }.start();
  }

  private static void add(Trace trace, long at, int i) {
    Map<String, Boolean> states = new LinkedHashMap<>();
    for (int end = 0; end < 12; end++) {
      states.put("end" + end, (i / (5 + end)) % 2 == 0);
    }
    trace.add(at, states);
  }

  private static void window(long start) {
    Path data = folder();
    WorkbenchWindow window = open(data);
    window.open(data.resolve("workshop/sandpiper.printer.json"));
    afterPulses(
        3,
        now -> {
          report("process start to third pulse of the whole window, ms", now - start);
          System.exit(0);
        });
  }

  private static void bare(long start) {
    Stage stage = new Stage();
    stage.setScene(new Scene(new StackPane(new javafx.scene.control.Label("bare")), 1280, 720));
    stage.show();
    afterPulses(
        3,
        now -> {
          report("process start to third pulse of a bare window, ms", now - start);
          System.exit(0);
        });
  }

  private static void afterPulses(int count, DoubleConsumer done) {
    new AnimationTimer() {
      private int seen;

      @Override
      public void handle(long now) {
        if (++seen == count) {
          stop();
          PauseTransition none = new PauseTransition(Duration.ONE);
          none.setOnFinished(end -> done.accept(System.currentTimeMillis()));
          none.play();
        }
      }
    }.start();
  }

  private static void report(String what, double figure) {
    System.out.printf("%-62s %10.0f%n", what, figure);
  }

  private static void report(String what, List<Double> figures) {
    double[] sorted = figures.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    System.out.printf(
        "%-62s median %7.2f  p95 %7.2f  p99 %7.2f  most %7.2f%n",
        what,
        at(sorted, 0.5),
        at(sorted, 0.95),
        at(sorted, 0.99),
        Arrays.stream(sorted).max().orElse(Double.NaN));
  }

  private static double at(double[] sorted, double share) {
    return sorted.length == 0
        ? Double.NaN
        : sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
  }
}
