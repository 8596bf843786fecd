package dev.gantrywright.physics;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How the baud generator of a family of parts works. */
public enum UartKind {
  AVR,
  LPC17,
  STM32,
  RP2040,
  SAM,
  SAMD,
  ESP32;

  /** The usual rates that are offered as neighbours, in bit/s. */
  public static final List<Long> USUAL_BAUDS =
      List.of(
          9600L, 19200L, 38400L, 57600L, 76800L, 115200L, 230400L, 250000L, 460800L, 500000L,
          921600L, 1000000L, 2000000L);

  /** The kind by its name in any case. */
  public static Optional<UartKind> of(String name) {
    return Arrays.stream(values())
        .filter(kind -> kind.name().equals(name.strip().toUpperCase(Locale.ROOT)))
        .findFirst();
  }

  /**
   * The setting with the smallest error in any mode of the UART (double speed, oversampling by 8).
   *
   * @param clockHz clock of the UART in Hz
   * @param baud wanted rate in bit/s
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public BaudSetting best(long clockHz, long baud) {
    return modes(clockHz, baud)
        .reduce((a, b) -> Math.abs(b.errorPercent()) < Math.abs(a.errorPercent()) ? b : a)
        .orElseThrow();
  }

  private Stream<BaudSetting> modes(long clockHz, long baud) {
    return switch (this) {
      case AVR -> Stream.of(false, true).map(u2x -> AvrUart.setting(clockHz, baud, u2x));
      case LPC17 -> Stream.of(Lpc17Uart.setting(clockHz, baud).plain());
      case STM32 -> Stream.of(false, true).map(over8 -> Stm32Uart.setting(clockHz, baud, over8));
      case RP2040 -> Stream.of(Rp2040Uart.setting(clockHz, baud));
      case SAM -> Stream.of(SamUart.setting(clockHz, baud));
      case SAMD -> Stream.of(SamUart.sercomSetting(clockHz, baud));
      case ESP32 -> Stream.of(Esp32Uart.setting(clockHz, baud));
    };
  }

  /**
   * The usual rates that this UART meets within a limit, lowest first.
   *
   * @param clockHz clock of the UART in Hz
   * @param limitPercent the most error to accept, above zero
   */
  public List<Long> usualBaudsWithin(long clockHz, double limitPercent) {
    return USUAL_BAUDS.stream()
        .filter(baud -> Math.abs(best(clockHz, baud).errorPercent()) <= limitPercent)
        .toList();
  }
}
