package dev.gantrywright.build;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a program takes, worked out from what the build printed.
 *
 * @param flashBytes code, constants and the stored values of variables
 * @param ramBytes variables; the stack comes on top
 */
public record MemoryNeed(long flashBytes, long ramBytes) {
  /**
   * From a build's size reports; empty where none of them tells flash from RAM.
   *
   * <p>Regions of a linker's table are told apart by their names, which the linker script chooses
   * (common practice, no published source). {@code text}, {@code data} and {@code bss} follow GNU
   * size: data is stored in flash and copied to RAM.
   */
  public static Optional<MemoryNeed> of(List<ReportedSize> sizes) {
    Optional<Long> text = last(sizes, "text");
    Optional<Long> data = last(sizes, "data");
    Optional<Long> bss = last(sizes, "bss");
    if (text.isPresent() && data.isPresent() && bss.isPresent()) {
      return Optional.of(new MemoryNeed(text.get() + data.get(), data.get() + bss.get()));
    }
    long flash = 0;
    long ram = 0;
    for (ReportedSize s : sizes) {
      String region = s.region().toLowerCase(Locale.ROOT);
      if (region.contains("flash")
          || region.endsWith("rom") && !region.contains("eeprom")
          || region.equals("program")) {
        flash += s.usedBytes();
      } else if (region.contains("ram") || region.equals("data") || region.contains("tcm")) {
        ram += s.usedBytes();
      }
    }
    return flash == 0 ? Optional.empty() : Optional.of(new MemoryNeed(flash, ram));
  }

  private static Optional<Long> last(List<ReportedSize> sizes, String region) {
    Optional<Long> found = Optional.empty();
    for (ReportedSize s : sizes) {
      found = s.region().equals(region) ? Optional.of(s.usedBytes()) : found;
    }
    return found;
  }
}
