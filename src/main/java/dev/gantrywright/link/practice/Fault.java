package dev.gantrywright.link.practice;

import java.util.Locale;

/**
 * Something wrong with the practice machine, chosen by the user. Spelled {@code kind:part:part}.
 */
public sealed interface Fault {
  /** The switch never moves: as if something touched it always, or never. */
  record Stuck(String endstop, boolean touched) implements Fault {}

  /** The wire is off. */
  record Broken(String endstop) implements Fault {}

  /** Two plugs are in each other's sockets. */
  record Swapped(String one, String other) implements Fault {}

  /** Both are wired to one input, so that both read what either does. */
  record Shared(String one, String other) implements Fault {}

  /** The contact chatters for so long after each change. */
  record Bounce(String endstop, double millis) implements Fault {}

  /** Picks up noise while another endstop is touched. */
  record Noise(String endstop) implements Fault {}

  /** A stored setting differs from what the firmware was built with. */
  record Stored(String axis, AxisMotion.Quantity quantity, double value) implements Fault {}

  /** The board restarts every so many seconds. */
  record Restarts(double everySeconds) implements Fault {}

  /** The board answers nothing from one moment to another, in seconds after it was built. */
  record Silence(double fromSeconds, double untilSeconds) implements Fault {}

  /** The board sends back what it receives. */
  record Echo() implements Fault {}

  /**
   * Reads one fault: {@code stuck:xMin:triggered}, {@code stuck:xMin:open}, {@code broken:xMin},
   * {@code swapped:xMin:yMin}, {@code shared:xMin:yMin}, {@code bounce:xMin:8}, {@code noise:xMin},
   * {@code stored:x.stepsPerMm:82}, {@code restarts:5}, {@code silence:2:10}, {@code echo}.
   *
   * @throws IllegalArgumentException with one clear line
   */
  static Fault parse(String text) {
    String[] p = text.strip().split(":", -1);
    try {
      return switch (p[0].toLowerCase(Locale.ROOT)) {
        case "stuck" -> new Stuck(p[1], touched(text, p[2]));
        case "broken" -> new Broken(p[1]);
        case "swapped" -> new Swapped(p[1], p[2]);
        case "shared" -> new Shared(p[1], p[2]);
        case "bounce" -> new Bounce(p[1], Double.parseDouble(p[2]));
        case "noise" -> new Noise(p[1]);
        case "stored" -> stored(text, p[1], Double.parseDouble(p[2]));
        case "restarts" -> new Restarts(positive(text, p[1]));
        case "silence" -> new Silence(Double.parseDouble(p[1]), Double.parseDouble(p[2]));
        case "echo" -> new Echo();
        default -> throw bad(text, "there is no such kind");
      };
    } catch (ArrayIndexOutOfBoundsException e) {
      throw bad(text, "a part is missing");
    } catch (NumberFormatException e) {
      throw bad(text, "a number is wanted");
    }
  }

  private static boolean touched(String text, String word) {
    return switch (word) {
      // Earlier releases said touched and free.
      case "triggered", "touched" -> true;
      case "open", "free" -> false;
      default -> throw bad(text, "the last part is 'triggered' or 'open'");
    };
  }

  private static double positive(String text, String number) {
    double value = Double.parseDouble(number);
    if (!(value > 0)) {
      throw bad(text, "the number must be above 0");
    }
    return value;
  }

  private static Stored stored(String text, String path, double value) {
    int dot = path.indexOf('.');
    if (dot > 0) {
      for (AxisMotion.Quantity q : AxisMotion.Quantity.values()) {
        if (q.field().equals(path.substring(dot + 1))) {
          return new Stored(path.substring(0, dot), q, value);
        }
      }
    }
    throw bad(
        text, "the setting is spelled as x.stepsPerMm, x.maxSpeed, x.acceleration or x.current");
  }

  private static IllegalArgumentException bad(String text, String why) {
    return new IllegalArgumentException(
        "'"
            + text
            + "' is no fault of the practice board: "
            + why
            + "; examples: stuck:xMin:open, swapped:xMin:yMin, bounce:xMin:8, stored:x.stepsPerMm:82");
  }
}
