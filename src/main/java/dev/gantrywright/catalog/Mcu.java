package dev.gantrywright.catalog;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * One microcontroller part.
 *
 * @param part the maker's part number without package and temperature letters
 * @param aliases other spellings of the same part
 * @param familyFacts what the whole family shares
 * @param flashBytes program flash inside the part, or the usual fit where flash stands outside
 * @param ram every bank of RAM
 * @param clockHz the highest processor clock
 * @param uartClocksHz clocks that usually feed the UARTs, the most usual first
 * @param uarts number of UARTs and USARTs, native USB not counted
 * @param nativeUsb true where the part itself is a USB device
 * @param eepromBytes built-in EEPROM, 0 for none
 * @param interrupts number of interrupt lines of an ARM part, where known
 * @param uf2Family family number in UF2 images, if one is registered
 * @param note what else to know, or empty
 * @param partSource where the facts of this row stand
 */
public record Mcu(
    String part,
    List<String> aliases,
    McuFamily familyFacts,
    long flashBytes,
    List<RamBank> ram,
    long clockHz,
    List<Long> uartClocksHz,
    int uarts,
    boolean nativeUsb,
    long eepromBytes,
    OptionalInt interrupts,
    OptionalLong uf2Family,
    String note,
    String partSource) {

  static Mcu of(Row row, McuFamily family) {
    return new Mcu(
        row.text("part"),
        row.texts("aliases"),
        family,
        row.whole("flashBytes"),
        row.rows("ram").stream().map(RamBank::of).toList(),
        row.whole("clockHz"),
        row.has("uartClocksHz") ? row.wholes("uartClocksHz") : family.uartClocksHz(),
        (int) row.whole("uarts"),
        row.flag("nativeUsb", false),
        row.whole("eepromBytes", 0),
        row.has("interrupts") ? OptionalInt.of((int) row.whole("interrupts")) : OptionalInt.empty(),
        row.has("uf2Family") ? OptionalLong.of(row.whole("uf2Family")) : family.uf2Family(),
        row.text("note", ""),
        row.text("source"));
  }

  public String family() {
    return familyFacts.id();
  }

  public String core() {
    return familyFacts.core();
  }

  public long flashBase() {
    return familyFacts.flashBase();
  }

  /** The first address behind the flash. */
  public long flashEnd() {
    return flashBase() + flashBytes;
  }

  public long bootAddress() {
    return familyFacts.bootAddress();
  }

  public String uartKind() {
    return familyFacts.uartKind();
  }

  public double ioVolts() {
    return familyFacts.ioVolts();
  }

  public double inputToleranceVolts() {
    return familyFacts.inputToleranceVolts();
  }

  /** True where a pin that bears 5 V bears it only with its internal pulls off. */
  public boolean toleranceLostWithPull() {
    return familyFacts.toleranceLostWithPull();
  }

  public String toleranceNote() {
    return familyFacts.toleranceNote();
  }

  public boolean pullUp() {
    return familyFacts.pullUp().isPresent();
  }

  public boolean pullDown() {
    return familyFacts.pullDown().isPresent();
  }

  public int adcBits() {
    return familyFacts.adcBits();
  }

  public boolean arm() {
    return familyFacts.elfMachine() == 40;
  }

  /** All banks together, in bytes; a stack or an array must still fit into one of them. */
  public long ramBytes() {
    return ram.stream().mapToLong(RamBank::bytes).sum();
  }

  public RamBank largestRam() {
    return ram.stream().max(Comparator.comparingLong(RamBank::bytes)).orElseThrow();
  }

  public Optional<RamBank> ramAt(long address) {
    return ram.stream().filter(bank -> bank.contains(address)).findFirst();
  }

  /** Where every fact of this part stands: the row's and the family's source. */
  public String source() {
    return partSource + "; " + familyFacts.source();
  }
}
