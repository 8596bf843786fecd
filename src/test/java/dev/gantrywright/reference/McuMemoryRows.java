package dev.gantrywright.reference;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.catalog.RamBank;
import dev.gantrywright.physics.BaudSetting;
import dev.gantrywright.physics.Stm32Uart;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Group 3: memories of MCU parts, and the STM32 USART. */
final class McuMemoryRows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  private static final Map<String, String> BASES =
      Map.ofEntries(
          Map.entry("STM32F4 CCM base", "STM32F405RG CCM RAM"),
          Map.entry("STM32H7 AXI SRAM base", "STM32H743ZI AXI SRAM"),
          Map.entry("STM32H7 DTCM base", "STM32H743ZI DTCM"),
          Map.entry("STM32H7 D2 SRAM1 base", "STM32H743ZI SRAM1"),
          Map.entry("STM32H7 D3 SRAM4 base", "STM32H743ZI SRAM4"),
          Map.entry("SAM3X8E SRAM0 base", "AT91SAM3X8E SRAM0"),
          Map.entry("SAM3X8E SRAM1 base", "AT91SAM3X8E SRAM1"),
          Map.entry("SAMD51 SRAM base", "ATSAMD51J19 SRAM"),
          Map.entry("RP2040 SRAM base", "RP2040 SRAM 0 to 3 (striped)"));

  McuMemoryRows() {
    super("G03_mcu_memory");
    formula("stm_usartdiv", Stm32Uart.class, row -> setting(row).divisor());
    formula("stm_err", Stm32Uart.class, row -> setting(row).errorPercent());
    formula("stm_err_abs", Stm32Uart.class, row -> Math.abs(setting(row).errorPercent()));
    formula("stm_baud", Stm32Uart.class, row -> setting(row).actualBaud());
    formula("stm_brr", Stm32Uart.class, row -> Stm32Uart.register(row.number("usartdiv"), false));
    formula("span", Catalog.class, McuMemoryRows::sramBytes);
    lookUp("local_avr", McuMemoryRows::avrHeader);
    unused("local_avrdude", "the part is not in the catalogue");
  }

  private static BaudSetting setting(HandbookRow row) {
    return Stm32Uart.setting((long) row.number("f"), (long) row.number("baud"), row.flag("over8"));
  }

  private static double sramBytes(HandbookRow row) {
    return part(row.quantity().substring(0, row.quantity().indexOf(' '))).ramBytes();
  }

  private static Mcu part(String name) {
    return CATALOG.mcu(name).orElseThrow(() -> new IllegalStateException(name));
  }

  /** The rows read from the C library's headers, which the catalogue repeats. */
  private static Use avrHeader(HandbookRow row) {
    Mcu mcu = part(row.quantity().substring(0, row.quantity().indexOf(' ')));
    RamBank ram = mcu.ram().get(0);
    return switch (row.text("macro")) {
      case "FLASHEND" -> Use.number(mcu.flashBytes() - 1, Catalog.class);
      case "RAMSTART" -> Use.number(ram.base(), Catalog.class);
      case "RAMEND" -> Use.number(ram.end() - 1, Catalog.class);
      case "E2END" -> Use.number(mcu.eepromBytes() - 1, Catalog.class);
      default -> Use.none("the catalogue keeps no " + row.text("macro"));
    };
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.has("chip")) {
      return chip(row);
    }
    String bank = BASES.get(row.quantity());
    if (bank != null) {
      return Use.number(bankBase(bank), Catalog.class);
    }
    return switch (row.quantity()) {
      case "STM32F1/F4/G0 SRAM base" -> shared(mcu -> mcu.ram().get(0).base());
      case "STM32F1/F4/G0/H7 flash base" -> shared(Mcu::flashBase);
      case "RP2040 XIP base" -> Use.number(part("RP2040").flashBase(), Catalog.class);
      case "RP2040 vector table after boot2" ->
          Use.number(part("RP2040").bootAddress(), Catalog.class);
      case "RP2040 SRAM end (first byte after)" ->
          Use.number(
              part("RP2040").ram().stream().mapToLong(RamBank::end).max().orElseThrow(),
              Catalog.class);
      case "SAM3X8E flash bank 0 base" ->
          Use.number(part("AT91SAM3X8E").flashBase(), Catalog.class);
      case "ESP32 internal SRAM" -> Use.number(part("ESP32").ramBytes() / 1024.0, Catalog.class);
      case "STM32H743 RAM banks DTCM/AXI/D2/D3" -> Use.text(h743(), Catalog.class);
      case "STM32H723 RAM total incl. shared TCM/AXI" ->
          Use.number(part("STM32H723VG").ramBytes() / 1024.0, Catalog.class);
      default -> Use.none("the catalogue keeps no such fact");
    };
  }

  private static Use shared(Function<Mcu, Long> fact) {
    long f1 = fact.apply(part("STM32F103C8"));
    boolean same = f1 == fact.apply(part("STM32F405RG")) && f1 == fact.apply(part("STM32G0B1RE"));
    return same ? Use.number(f1, Catalog.class) : Use.text("differ", Catalog.class);
  }

  private static String h743() {
    Map<String, Long> kib =
        part("STM32H743ZI").ram().stream()
            .collect(java.util.stream.Collectors.toMap(RamBank::name, bank -> bank.bytes() / 1024));
    return kib.get("DTCM")
        + "/"
        + kib.get("AXI SRAM")
        + "/"
        + (kib.get("SRAM1") + kib.get("SRAM2") + kib.get("SRAM3"))
        + "/"
        + kib.get("SRAM4");
  }

  private static double bankBase(String partAndBank) {
    int space = partAndBank.indexOf(' ');
    return part(partAndBank.substring(0, space)).ram().stream()
        .filter(bank -> bank.name().equals(partAndBank.substring(space + 1)))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(partAndBank))
        .base();
  }

  private static Use chip(HandbookRow row) {
    Matcher samd = Pattern.compile("SAMD51x(\\d\\d)").matcher(row.text("chip"));
    String name =
        samd.matches()
            ? "SAMD51" + (samd.group(1).equals("20") ? "N" : "J") + samd.group(1)
            : row.text("chip");
    Mcu mcu = part(name);
    String quantity = row.quantity().toLowerCase(Locale.ROOT);
    OptionalDouble bytes =
        quantity.contains("flash")
            ? OptionalDouble.of(mcu.flashBytes())
            : quantity.contains("sram")
                ? OptionalDouble.of(mcu.ramBytes())
                : OptionalDouble.empty();
    return bytes.isPresent()
        ? Use.number(bytes.getAsDouble() / 1024, Catalog.class)
        : Use.none("the catalogue keeps no such fact");
  }
}
