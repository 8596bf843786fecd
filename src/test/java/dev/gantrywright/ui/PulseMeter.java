package dev.gantrywright.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.scene.Scene;

/**
 * How long the toolkit's thread works in each pulse: from its start, animations first, to the end
 * of its layout pass. The toolkit begins a pulse every 16.7 ms; one that begins late was kept
 * waiting.
 */
final class PulseMeter {
  private final List<Double> work = new ArrayList<>();
  private final List<Double> apart = new ArrayList<>();
  private long begun;
  private long before;
  private boolean running;

  PulseMeter(Scene scene) {
    // The first animation to start is the first to run in a pulse.
    AnimationTimer timer =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            begun = System.nanoTime();
            if (running && before != 0) {
              apart.add((begun - before) / 1e6);
            }
            before = begun;
          }
        };
    timer.start();
    scene.addPostLayoutPulseListener(
        () -> {
          if (running && begun != 0) {
            work.add((System.nanoTime() - begun) / 1e6);
          }
        });
  }

  /** From now on pulses count. */
  void begin() {
    running = true;
    before = 0;
  }

  void end() {
    running = false;
  }

  void report() {
    Figures.report("work of the toolkit's thread in a pulse, ms", work);
    Figures.report("pulse to pulse, ms", apart);
    Figures.report(
        "pulses with more than 16 ms of work", work.stream().filter(w -> w > 16).count());
    Figures.report(
        "pulses that came a whole beat late", apart.stream().filter(a -> a > 33.3).count());
  }
}
