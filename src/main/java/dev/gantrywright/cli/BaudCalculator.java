package dev.gantrywright.cli;

import dev.gantrywright.physics.AvrUart;
import dev.gantrywright.physics.BaudSetting;
import dev.gantrywright.physics.Esp32Uart;
import dev.gantrywright.physics.FractionalSetting;
import dev.gantrywright.physics.Lpc17Uart;
import dev.gantrywright.physics.Rp2040Uart;
import dev.gantrywright.physics.SamUart;
import dev.gantrywright.physics.Stm32Uart;
import dev.gantrywright.physics.UartKind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute baud. */
@Command(
    name = "baud",
    description = "What a UART makes of a baud rate: divisor, rate that comes out, error.")
final class BaudCalculator extends Calculator {
  // Half of the 4.5 to 5 % that an ideal receiver of ten bits bears, both ends sharing it; the AVR
  // data sheets recommend the same figure.
  private static final double USUAL_LIMIT = 2.0;

  @Option(
      names = "--uart",
      paramLabel = "KIND",
      required = true,
      description = "avr, lpc17, stm32, rp2040, sam, samd or esp32.")
  String uart;

  @Option(
      names = "--clock",
      paramLabel = "HZ",
      converter = WholeNumber.class,
      description =
          "Clock that feeds the UART. Without it: avr 16 MHz, lpc17 25 MHz, rp2040 125 MHz, "
              + "sam 84 MHz, samd 48 MHz, esp32 80 MHz; stm32 has no usual one.")
  Long clock;

  @Option(
      names = "--baud",
      paramLabel = "RATE",
      required = true,
      converter = WholeNumber.class,
      description = "Wanted rate in bit/s.")
  Long baud;

  @Option(names = "--double-speed", description = "avr: with U2X set, 8 samples a bit.")
  boolean doubleSpeed;

  @Option(names = "--over8", description = "stm32: oversampling by 8.")
  boolean over8;

  private long clockUsed;

  @Override
  Answer answer() {
    UartKind kind = UartKind.of(uart).orElseThrow(() -> problem(unknownUart()));
    refuse(doubleSpeed && kind != UartKind.AVR, "--double-speed", "it belongs to --uart avr");
    refuse(over8 && kind != UartKind.STM32, "--over8", "it belongs to --uart stm32");
    Answer answer = answer(kind);
    return withNeighbours(answer, kind);
  }

  private Answer answer(UartKind kind) {
    return switch (kind) {
      case AVR ->
          whole(AvrUart.setting(clock(16_000_000), baud, doubleSpeed), "UBRR")
              .line("formula", "clock / (" + (doubleSpeed ? 8 : 16) + " x (UBRR + 1))")
              .line("source", "ATmega data sheets, internal clock generation");
      case LPC17 -> lpc17(Lpc17Uart.setting(clock(25_000_000), baud));
      case STM32 ->
          plain(Stm32Uart.setting(stm32Clock(), baud, over8), "USARTDIV")
              .line("formula", "clock / (" + (over8 ? 8 : 16) + " x USARTDIV)")
              .line("source", "RM0008 section 27.3.4, RM0390 tables 150 and 152");
      case RP2040 ->
          plain(Rp2040Uart.setting(clock(125_000_000), baud), "divisor")
              .line("formula", "clock / (16 x divisor), divisor in 1/64")
              .line("source", "RP2040 data sheet section 4.2.7.1 (memory)");
      case SAM ->
          whole(SamUart.setting(clock(84_000_000), baud), "CD")
              .line("formula", "clock / (16 x CD)")
              .line("source", "SAM3X/A data sheet, UART_BRGR (memory)");
      case SAMD ->
          whole(SamUart.sercomSetting(clock(48_000_000), baud), "BAUD")
              .line("formula", "clock / 16 x (1 - BAUD / 65536)")
              .line("source", "SAM D5x/E5x data sheet, SERCOM (memory)");
      case ESP32 ->
          plain(Esp32Uart.setting(clock(80_000_000), baud), "divisor")
              .line("formula", "clock / divisor, divisor in 1/16")
              .line("source", "ESP32 technical reference manual (memory)");
    };
  }

  /** Names the usual rates that do come out well, where the wanted one does not. */
  private Answer withNeighbours(Answer answer, UartKind kind) {
    double limit =
        kind == UartKind.AVR ? AvrUart.recommendedErrorPercent(8, doubleSpeed) : USUAL_LIMIT;
    double error = Math.abs((double) answer.values().get("errorPercent"));
    if (error <= limit) {
      return answer;
    }
    List<Long> better = kind.usualBaudsWithin(clockUsed, limit);
    return answer
        .line("mind", "beyond the ±" + limit + " % that a receiver of 8 data bits should see")
        .line(
            "better",
            better.isEmpty()
                ? "no usual rate comes out within that at this clock"
                : better.stream().map(String::valueOf).collect(Collectors.joining(", ")));
  }

  private long clock(long usual) {
    clockUsed = clock == null ? usual : clock;
    return clockUsed;
  }

  private long stm32Clock() {
    return clock(needed(clock, "--clock", "the clock of the USART's bus in Hz (APB1 or APB2)"));
  }

  private static Answer lpc17(FractionalSetting setting) {
    Answer answer =
        new Answer()
            .register("divisor", "DL", setting.divisor())
            .register("divAdd", "DIVADDVAL", setting.divAdd())
            .register("mul", "MULVAL", setting.mul());
    return rate(answer, setting.plain())
        .line("formula", "clock / (16 x DL x (1 + DIVADDVAL / MULVAL))")
        .line("source", "UM10360 14.4.12; every setting tried");
  }

  private static Answer whole(BaudSetting setting, String name) {
    return rate(new Answer().register("divisor", name, Math.round(setting.divisor())), setting);
  }

  private static Answer plain(BaudSetting setting, String name) {
    return rate(new Answer().figure("divisor", name, setting.divisor(), ""), setting);
  }

  private static Answer rate(Answer answer, BaudSetting setting) {
    return answer
        .figure("actualBaud", "actual rate", setting.actualBaud(), "bit/s")
        .figure("errorPercent", "error", setting.errorPercent(), "%");
  }

  private String unknownUart() {
    return "--uart "
        + uart
        + " is not known; known are "
        + Arrays.stream(UartKind.values())
            .map(kind -> kind.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining(", "));
  }
}
