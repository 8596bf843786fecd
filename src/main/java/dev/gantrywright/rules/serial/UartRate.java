package dev.gantrywright.rules.serial;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.machine.Parity;
import dev.gantrywright.machine.Serial;
import dev.gantrywright.physics.AvrUart;
import dev.gantrywright.physics.BaudSetting;
import dev.gantrywright.physics.ReceiverWindow;
import dev.gantrywright.physics.UartKind;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the console's UART makes of the stated rate. */
record UartRate(Mcu mcu, UartKind kind, long clockHz, long baud, int frameBits) {
  // Common practice, no published source; an ideal pair of ends bears 5 % together at ten bits.
  private static final double LIMIT_PERCENT = 2.0;

  // What is left for the other end: common practice, no published source.
  private static final double OTHER_END_PERCENT = 1.0;

  /** Empty where rate, part or clock is unknown, or the console does not run over a UART. */
  static Optional<UartRate> of(Context context) {
    Serial serial = context.profile().serial();
    BoardPort port = context.port(serial.port()).orElse(null);
    boolean usb =
        port == null || port.kind() == null
            ? Boolean.TRUE.equals(serial.nativeUsb())
            : port.kind() == dev.gantrywright.machine.PortKind.USB;
    if (serial.baud() == null || serial.baud() <= 0 || usb || context.mcu().isEmpty()) {
      return Optional.empty();
    }
    Mcu mcu = context.mcu().get();
    Optional<UartKind> kind = UartKind.of(mcu.uartKind());
    long clock =
        port != null && port.clockHz() != null
            ? Math.round(port.clockHz())
            : mcu.uartClocksHz().isEmpty() ? 0 : mcu.uartClocksHz().get(0);
    int bits = serial.dataBits() == null ? 8 : serial.dataBits();
    int parity = serial.parity() == null || serial.parity() == Parity.NONE ? 0 : 1;
    return kind.filter(known -> clock > 0)
        .map(known -> new UartRate(mcu, known, clock, serial.baud(), bits + parity));
  }

  /** Whether the rate is as near as the part's manual asks for. */
  boolean fits() {
    return fits(baud);
  }

  /** Whether a receiver follows all the same, with something left for the other end. */
  boolean bears() {
    return fits() || kind == UartKind.AVR && (follows(false) || follows(true));
  }

  private boolean follows(boolean doubleSpeed) {
    ReceiverWindow window = AvrUart.window(bits(), doubleSpeed);
    double sender =
        (1 / (1 + AvrUart.setting(clockHz, baud, doubleSpeed).errorPercent() / 100) - 1) * 100;
    return window.accepts(sender - OTHER_END_PERCENT) && window.accepts(sender + OTHER_END_PERCENT);
  }

  /** The better neighbours, each to be looked at: the console must change as well. */
  List<Remedy> remedies() {
    List<Remedy> remedies = new ArrayList<>();
    for (long better : neighbours()) {
      remedies.add(
          Remedy.review(
              n(better) + " bit/s, out by " + Shown.percent(errorAt(better)),
              "serial.baud",
              (int) better));
    }
    if (remedies.isEmpty()) {
      remedies.add(Remedy.show("choose a rate that the clock divides to"));
    }
    return remedies;
  }

  private boolean fits(long rate) {
    if (kind == UartKind.AVR) {
      return avr(rate, false).fits() || avr(rate, true).fits();
    }
    return Math.abs(errorAt(rate)) <= LIMIT_PERCENT;
  }

  /** Whether an AVR meets the rate at double speed only. */
  boolean needsDoubleSpeed() {
    return kind == UartKind.AVR && !avr(baud, false).fits() && avr(baud, true).fits();
  }

  /** The smallest error in any mode, percent, signed. */
  double errorAt(long rate) {
    return kind.best(clockHz, rate).errorPercent();
  }

  /** The usual rates that fit, the nearest below and above first. */
  List<Long> neighbours() {
    List<Long> fitting = UartKind.USUAL_BAUDS.stream().filter(this::fits).toList();
    Optional<Long> below =
        fitting.stream().filter(rate -> rate < baud).max(Comparator.naturalOrder());
    Optional<Long> above =
        fitting.stream().filter(rate -> rate > baud).min(Comparator.naturalOrder());
    return java.util.stream.Stream.of(below, above).flatMap(Optional::stream).toList();
  }

  String evidence() {
    String from = n(baud) + " bit/s from " + Shown.hertz(clockHz) + ": ";
    if (kind == UartKind.AVR) {
      AvrMode normal = avr(baud, false);
      AvrMode twice = avr(baud, true);
      return from + normal.text("normal speed") + "; " + twice.text("double speed");
    }
    BaudSetting best = kind.best(clockHz, baud);
    return from
        + "divisor "
        + n(best.divisor())
        + " gives "
        + n(Math.round(best.actualBaud()))
        + ", out by "
        + Shown.percent(best.errorPercent())
        + ", allowed "
        + n(LIMIT_PERCENT)
        + " %";
  }

  String source() {
    return kind == UartKind.AVR
        ? "ATmega48A to 328P data sheet DS40002061A tables 20-2 and 20-3, \"Recommended Max Receiver Error\", the same USART"
        : mcu.familyFacts().source();
  }

  private AvrMode avr(long rate, boolean doubleSpeed) {
    return new AvrMode(
        AvrUart.setting(clockHz, rate, doubleSpeed),
        AvrUart.recommendedErrorPercent(bits(), doubleSpeed));
  }

  /** Data and parity bits, as the AVR tables have them. */
  private int bits() {
    return Math.max(5, Math.min(10, frameBits));
  }

  private record AvrMode(BaudSetting setting, double limit) {
    boolean fits() {
      return Math.abs(setting.errorPercent()) <= limit;
    }

    String text(String mode) {
      return "UBRR "
          + n(Math.round(setting.divisor()))
          + " at "
          + mode
          + " gives "
          + Shown.percent(setting.errorPercent())
          + " (recommended at most "
          + n(limit)
          + " %)";
    }
  }
}
