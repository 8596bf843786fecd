package dev.gantrywright.ui;

import dev.gantrywright.ui.prove.TraceBox;
import dev.gantrywright.ui.state.Trace;
import dev.gantrywright.ui.state.TraceLook;
import dev.gantrywright.ui.theme.Mode;
import dev.gantrywright.ui.theme.Theme;
import dev.gantrywright.ui.theme.Tones;
import dev.gantrywright.ui.theme.Typefaces;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.util.Duration;

/**
 * Twelve strips with their figures, 1180 × 600 pixels, full from the beginning and fed at 50 Hz
 * from a thread of their own for 30 s.
 */
final class TraceBenchmark {
  private static final int STRIPS = 12;
  private static final long PERIOD = 20_000_000L;
  private static final double WARM_UP = 5;
  private static final double SECONDS = 25;

  private TraceBenchmark() {}

  /**
   * @param span seconds that the picture shows
   */
  static void run(int span) {
    Platform.startup(() -> begin(span));
  }

  private static void begin(int span) {
    Typefaces.load();
    List<String> ends = new ArrayList<>();
    for (int i = 0; i < STRIPS; i++) {
      ends.add("end" + i);
    }
    Trace trace = new Trace(ends);
    long begin = System.nanoTime();
    for (int i = 0; i < Trace.CAPACITY; i++) {
      add(trace, begin - (Trace.CAPACITY - i) * PERIOD, i);
    }
    TraceLook look = new TraceLook(() -> trace, System::nanoTime, Clock.systemDefaultZone());
    TraceBox box = new TraceBox(look, () -> null, () -> 50);
    Stage stage = new Stage();
    stage.setScene(new Scene(new StackPane(box), 1180, 600));
    Theme.apply(stage.getScene(), Mode.LIGHT);
    PulseMeter meter = new PulseMeter(stage.getScene());
    box.show(true, Tones.of(Mode.LIGHT));
    look.span(span, 0);
    stage.show();
    Thread feeder = new Thread(() -> feed(trace), "feeder");
    feeder.setDaemon(true);
    // As the program does when a printer was opened: there is no trace before that.
    new Thread(Tenure::settle, "tenure").start();
    feeder.start();
    after(WARM_UP, meter::begin);
    after(
        WARM_UP + SECONDS,
        () -> {
          meter.end();
          System.out.println("trace, 12 strips at 50 Hz, " + span + " s shown");
          Figures.report("times painted", box.strips().paintings());
          meter.report();
          System.exit(0);
        });
  }

  private static void feed(Trace trace) {
    for (int i = Trace.CAPACITY; ; i++) {
      add(trace, System.nanoTime(), i);
      java.util.concurrent.locks.LockSupport.parkNanos(PERIOD);
    }
  }

  static void after(double seconds, Runnable act) {
    PauseTransition pause = new PauseTransition(Duration.seconds(seconds));
    pause.setOnFinished(end -> act.run());
    pause.play();
  }

  private static void add(Trace trace, long at, int i) {
    Map<String, Boolean> states = new LinkedHashMap<>();
    for (int end = 0; end < STRIPS; end++) {
      states.put("end" + end, (i / (5 + end)) % 2 == 0);
    }
    trace.add(at, states);
  }
}
