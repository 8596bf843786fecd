package dev.gantrywright.ui;

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

  /** Two beats. */
  private static final double LATE = 33.3;

  private final List<String> overlong = new ArrayList<>();
  private final List<String> late = new ArrayList<>();
  private final List<Double> work = new ArrayList<>();
  private final List<Double> ofProcessor = new ArrayList<>();
  private final List<Double> apart = new ArrayList<>();
  private long begun;
  private long before;
  private long since;
  private long laidOut;
  private long processorBefore;
  private long collectedBefore;
  private long loadedBefore;
  private long waitedBefore;
  private CoreWait core;
  private boolean running;
  private int longOfItself;

  PulseMeter(Scene scene) {
    // The first animation to start is the first to run in a pulse.
    AnimationTimer timer =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            begun = System.nanoTime();
            late();
            processorBefore = KeystrokeParts.processor();
            collectedBefore = KeystrokeParts.collected();
            loadedBefore = loaded();
            core = core == null ? new CoreWait() : core;
            waitedBefore = core.nanos();
            if (running && before != 0) {
              apart.add((begun - before) / 1e6);
            }
            before = begun;
          }
        };
    timer.start();
    scene.addPreLayoutPulseListener(() -> laidOut = System.nanoTime());
    scene.addPostLayoutPulseListener(
        () -> {
          if (running && begun != 0) {
            double ms = (System.nanoTime() - begun) / 1e6;
            if (ms > LONG) {
              double waited = (core.nanos() - waitedBefore) / 1e6;
              longOfItself += ms - waited > LONG ? 1 : 0;
              overlong.add(
                  String.format(
                      "%.0f ms, %.1f s after the beginning: before styles and layout %.0f, of processor"
                          + " %.0f, waiting for a core %.0f, of garbage collection %d; %d classes"
                          + " loaded",
                      ms,
                      (begun - since) / 1e9,
                      (laidOut - begun) / 1e6,
                      (KeystrokeParts.processor() - processorBefore) / 1e6,
                      waited,
                      KeystrokeParts.collected() - collectedBefore,
                      loaded() - loadedBefore));
            }
            work.add(ms);
            ofProcessor.add((KeystrokeParts.processor() - processorBefore) / 1e6);
          }
        });
  }

  /** What kept the pulse that begins now from coming a beat earlier. */
  private void late() {
    double ms = (begun - before) / 1e6;
    if (running && before != 0 && core != null && ms > LATE) {
      late.add(
          String.format(
              "%.0f ms after the one before, %.1f s after the beginning: of processor %.0f, waiting"
                  + " for a core %.0f, of garbage collection %d; %d classes loaded",
              ms,
              (begun - since) / 1e9,
              (KeystrokeParts.processor() - processorBefore) / 1e6,
              (core.nanos() - waitedBefore) / 1e6,
              KeystrokeParts.collected() - collectedBefore,
              loaded() - loadedBefore));
    }
  }

  /** From now on pulses count. */
  void begin() {
    running = true;
    before = 0;
    since = System.nanoTime();
  }

  private static long loaded() {
    return ManagementFactory.getClassLoadingMXBean().getTotalLoadedClassCount();
  }

  void end() {
    running = false;
  }

  void report() {
    Figures.report("work of the toolkit's thread in a pulse, ms", work);
    Figures.report("of it with a core, ms", ofProcessor);
    Figures.report("pulse to pulse, ms", apart);
    Figures.report("pulses with more than 16 ms of work", overlong.size());
    Figures.report("of them without the waiting for a core", longOfItself);
    overlong.forEach(each -> System.out.println("  " + each));
    Figures.report("pulses that came a whole beat late", late.size());
    late.forEach(each -> System.out.println("  " + each));
  }
}
