package dev.gantrywright.ui;

import java.util.List;

/** Prints what a benchmark measured. */
final class Figures {
  private Figures() {}

  static void report(String what, double figure) {
    System.out.printf("%-66s %10.0f%n", what, figure);
  }

  static void report(String what, List<Double> figures) {
    double[] sorted = figures.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    System.out.printf(
        "%-66s median %7.2f  p95 %7.2f  p99 %7.2f  most %7.2f  of %d%n",
        what, at(sorted, 0.5), at(sorted, 0.95), at(sorted, 0.99), at(sorted, 1), sorted.length);
  }

  private static double at(double[] sorted, double share) {
    return sorted.length == 0
        ? Double.NaN
        : sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
  }
}
