package dev.gantrywright.ui;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.ui.theme.Typefaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.util.Duration;

/**
 * Measures the window: {@code keystroke}, {@code keystroke-same}, {@code trace [SECONDS]}, {@code
 * log}, {@code log-usb}, {@code window}, {@code bare}, {@code demo}, or {@code classes} for what
 * the window loads by itself. See {@code docs/benchmarks/window.sh}.
 */
public final class WindowBenchmark {
  private static final int SETTINGS = 10_000;

  private WindowBenchmark() {}

  public static void main(String[] args) throws Exception {
    long start = ProcessHandle.current().info().startInstant().orElseThrow().toEpochMilli();
    if (!args[0].equals("bare") && !args[0].equals("classes")) {
      // As the launcher does.
      WarmUp.begin();
    }
    switch (args[0]) {
      case "keystroke" -> KeystrokeBenchmark.run(folder("feathers.h"));
      case "keystroke-same" -> KeystrokeBenchmark.run(folder("roost.h"));
      case "trace" -> TraceBenchmark.run(args.length > 1 ? Integer.parseInt(args[1]) : 20);
      case "log" -> LogBenchmark.run(folder(""), 0);
      case "log-usb" -> LogBenchmark.run(folder(""), LogBenchmark.FULL_SPEED_USB);
      case "window", "demo", "classes" -> {
        Path data = Files.createTempDirectory("window-benchmark");
        Surroundings around = Surroundings.in(data, data.resolve("workshop"));
        boolean first = args[0].equals("window");
        Platform.startup(() -> window(start, around, first));
      }
      default -> Platform.startup(() -> bare(start));
    }
    Thread.currentThread().join();
  }

  /** A workshop whose firmware folder has so many settings more, in this header of it. */
  private static Path folder(String header) throws IOException {
    Path data = Files.createTempDirectory("window-benchmark");
    Path workshop = data.resolve("workshop");
    DemoWorkshop.unpack(workshop);
    if (header.isEmpty()) {
      return data;
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < SETTINGS; i++) {
      text.append(i % 7 == 0 ? "//#define FEATHER_" : "#define FEATHER_")
          .append(i)
          .append("   ")
          .append(i * 3)
          .append("  // mm\n");
    }
    Path file = workshop.resolve("rookery-2.3/config").resolve(header);
    // Byte for byte: a header's encoding is its own.
    byte[] rest = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    Files.write(file, (text + new String(rest, ISO_8859_1)).getBytes(ISO_8859_1));
    return data;
  }

  static WorkbenchWindow open(Path data) {
    return open(Surroundings.in(data, data.resolve("workshop")));
  }

  static WorkbenchWindow open(Surroundings around) {
    Typefaces.load();
    Stage stage = new Stage();
    WorkbenchWindow window = Workbench.open(stage, around);
    stage.setWidth(1280);
    stage.setHeight(720);
    return window;
  }

  /** What the program does at its start, up to the third pulse of its window, or to the demo. */
  private static void window(long start, Surroundings around, boolean firstOnly) {
    WorkbenchWindow window = Workbench.open(new Stage(), around);
    if (!firstOnly) {
      window.afterFirstFrame(() -> Workbench.begin(window, around, Optional.empty()));
      shown(window, start);
      return;
    }
    afterPulses(
        3,
        now -> {
          Figures.report("process start to third pulse of the whole window, ms", now - start);
          System.exit(0);
        });
  }

  /** Up to the demo printer described and checked, with the practice board on its line. */
  private static void shown(WorkbenchWindow window, long start) {
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        boolean there =
            window
                .printer()
                .map(
                    desk ->
                        desk.judged().get().revision() >= 0
                            && desk.planned().get().revision() >= 0
                            && !desk.link().live().get().states().isEmpty())
                .orElse(false);
        if (there) {
          stop();
          Figures.report(
              "process start to the demo printer checked and watched, ms",
              System.currentTimeMillis() - start);
          System.exit(0);
        }
      }
    }.start();
  }

  private static void bare(long start) {
    Stage stage = new Stage();
    stage.setScene(new Scene(new StackPane(new javafx.scene.control.Label("bare")), 1280, 720));
    stage.show();
    afterPulses(
        3,
        now -> {
          Figures.report("process start to third pulse of a bare window, ms", now - start);
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
}
