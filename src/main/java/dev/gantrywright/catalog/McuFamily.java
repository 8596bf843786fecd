package dev.gantrywright.catalog;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/**
 * What all parts of one family share.
 *
 * @param id the family's name, as in {@link Mcu#family()}
 * @param core the processor core
 * @param flashBase address of the first flash byte as the processor sees it
 * @param bootAddress where the processor finds its vector table (or its image) after reset when no
 *     bootloader is in the way
 * @param uartKind how the baud generator works: avr, lpc17, stm32, rp2040, sam, samd or esp32
 * @param uartClocksHz clocks that usually feed the UARTs, the most usual one first
 * @param ioVolts supply of the input pins
 * @param inputToleranceVolts the most that the tolerant digital pins bear
 * @param plainPinToleranceVolts the most that the other pins bear
 * @param toleranceLostWithPull true where a tolerant pin bears 5 V only with its pulls off
 * @param toleranceNote the conditions in words
 * @param pullUp the pull-up inside a pin, if there is one
 * @param pullDown the pull-down inside a pin, if there is one
 * @param adcBits resolution of the analogue inputs
 * @param elfMachine e_machine of ELF images
 * @param uf2Family family number in UF2 images, if one is registered
 * @param suffix what may follow the part number for package and temperature, as an expression
 * @param source where these facts stand
 */
public record McuFamily(
    String id,
    String core,
    long flashBase,
    long bootAddress,
    String uartKind,
    List<Long> uartClocksHz,
    double ioVolts,
    double inputToleranceVolts,
    double plainPinToleranceVolts,
    boolean toleranceLostWithPull,
    String toleranceNote,
    Optional<PullResistor> pullUp,
    Optional<PullResistor> pullDown,
    int adcBits,
    int elfMachine,
    OptionalLong uf2Family,
    Pattern suffix,
    String source) {

  static McuFamily of(Row row) {
    return new McuFamily(
        row.text("id"),
        row.text("core"),
        row.whole("flashBase"),
        row.whole("bootAddress"),
        row.text("uartKind"),
        row.wholes("uartClocksHz"),
        row.number("ioVolts"),
        row.number("inputToleranceVolts"),
        row.number("plainPinToleranceVolts"),
        row.flag("toleranceLostWithPull", false),
        row.text("toleranceNote"),
        pull(row, "pullUpOhms"),
        pull(row, "pullDownOhms"),
        (int) row.whole("adcBits"),
        (int) row.whole("elfMachine"),
        row.has("uf2Family") ? OptionalLong.of(row.whole("uf2Family")) : OptionalLong.empty(),
        Pattern.compile(row.text("suffix"), Pattern.CASE_INSENSITIVE),
        row.text("source"));
  }

  private static Optional<PullResistor> pull(Row row, String key) {
    return row.has(key) ? Optional.of(PullResistor.of(row, key)) : Optional.empty();
  }
}
