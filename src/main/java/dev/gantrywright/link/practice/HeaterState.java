package dev.gantrywright.link.practice;

import java.util.ArrayDeque;
import java.util.Deque;

/** One heater's temperature over time: full power below the target, none above it. */
final class HeaterState {
  private static final double STEP_SECONDS = 0.02;

  /** Longest stretch that is followed in steps; beyond it the heater has settled. */
  private static final double LONGEST_SECONDS = 3_600;

  private final ThermalPlant plant;
  private final Deque<Double> delayed = new ArrayDeque<>();
  private double celsius;
  private double target;
  private double openPower = -1;
  private long at;

  HeaterState(ThermalPlant plant, long now) {
    this.plant = plant;
    this.celsius = plant.ambient();
    this.at = now;
    for (double t = 0; t < plant.deadSeconds(); t += STEP_SECONDS) {
      delayed.addLast(0.0);
    }
  }

  String name() {
    return plant.name();
  }

  double celsius(long now) {
    run(now);
    return celsius;
  }

  double target() {
    return target;
  }

  double power() {
    return openPower >= 0 ? openPower : celsius < target ? 1.0 : 0.0;
  }

  void heatTo(double celsiusWanted, long now) {
    run(now);
    target = celsiusWanted;
    openPower = -1;
  }

  /** Constant power, 0 to 1, for a step response. */
  void drive(double share, long now) {
    run(now);
    target = 0;
    openPower = Math.max(0, Math.min(1, share));
  }

  private void run(long now) {
    double seconds = Math.min(LONGEST_SECONDS, (now - at) / 1e9);
    long steps = (long) (seconds / STEP_SECONDS);
    for (long i = 0; i < steps; i++) {
      delayed.addLast(power());
      double u = delayed.removeFirst();
      celsius +=
          STEP_SECONDS * (plant.gain() * u - (celsius - plant.ambient())) / plant.lagSeconds();
    }
    at += (long) (steps * STEP_SECONDS * 1e9);
    if (now - at > 1e9) {
      at = now;
    }
  }
}
