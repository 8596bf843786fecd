package dev.gantrywright.build;

import java.util.function.DoubleConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Progress from the two ways in which builds print it: {@code [ 42%]} and {@code [12/345]} at the
 * start of a line. It never goes back.
 */
final class ProgressReader {
  private static final Pattern PERCENT = Pattern.compile("^\\s*\\[\\s*(\\d{1,3})%\\]");
  private static final Pattern COUNT = Pattern.compile("^\\s*\\[\\s*(\\d{1,6})/(\\d{1,6})\\]");

  private final DoubleConsumer onProgress;
  private double highest;

  ProgressReader(DoubleConsumer onProgress) {
    this.onProgress = onProgress;
  }

  void line(String text) {
    double done = read(text);
    if (done > highest && done <= 1) {
      highest = done;
      onProgress.accept(done);
    }
  }

  private static double read(String text) {
    Matcher percent = PERCENT.matcher(text);
    if (percent.find()) {
      return Integer.parseInt(percent.group(1)) / 100.0;
    }
    Matcher count = COUNT.matcher(text);
    if (count.find() && Integer.parseInt(count.group(2)) > 0) {
      return Integer.parseInt(count.group(1)) / (double) Integer.parseInt(count.group(2));
    }
    return 0;
  }
}
