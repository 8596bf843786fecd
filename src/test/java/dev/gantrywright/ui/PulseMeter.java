package dev.gantrywright.ui;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
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
  private static final double LONG = 16;

  private final List<String> overlong = new ArrayList<>();
  private final List<Double> work = new ArrayList<>();
  private final List<Double> apart = new ArrayList<>();
  private long begun;
  private long before;
  private long since;
  private long collectedBefore;
  private boolean running;

  PulseMeter(Scene scene) {
    // The first animation to start is the first to run in a pulse.
    AnimationTimer timer =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            begun = System.nanoTime();
            collectedBefore = collected();
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
            double ms = (System.nanoTime() - begun) / 1e6;
            if (ms > LONG) {
              overlong.add(
                  String.format(
                      "%.0f ms, of it %d of garbage collection, %.1f s after the beginning",
                      ms, collected() - collectedBefore, (begun - since) / 1e9));
            }
            work.add(ms);
          }
        });
  }

  /** From now on pulses count. */
  void begin() {
    running = true;
    before = 0;
    since = System.nanoTime();
  }

  private static long collected() {
    return ManagementFactory.getGarbageCollectorMXBeans().stream()
        .mapToLong(GarbageCollectorMXBean::getCollectionTime)
        .sum();
  }

  void end() {
    running = false;
  }

  void report() {
    Figures.report("work of the toolkit's thread in a pulse, ms", work);
    Figures.report("pulse to pulse, ms", apart);
    Figures.report("pulses with more than 16 ms of work", overlong.size());
    overlong.forEach(each -> System.out.println("  " + each));
    Figures.report(
        "pulses that came a whole beat late", apart.stream().filter(a -> a > 33.3).count());
  }
}
