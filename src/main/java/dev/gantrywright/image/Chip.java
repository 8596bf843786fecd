package dev.gantrywright.image;

import java.util.List;
import java.util.OptionalLong;

/**
 * The controller that an image is judged for.
 *
 * @param part the part number
 * @param family the maker's family, as {@code STM32F4} or {@code LPC17xx}
 * @param core the processor core
 * @param flash where its program memory lies
 * @param preambleBytes what stands in flash before the vectors when no bootloader is there (the
 *     RP2040's second boot stage)
 * @param ram its banks of RAM; memory comes in banks, so one size would mislead
 * @param uf2Family the family number that its UF2 loader takes, where one is registered
 * @param source where these figures come from
 */
public record Chip(
    String part,
    String family,
    Core core,
    Range flash,
    long preambleBytes,
    List<Bank> ram,
    OptionalLong uf2Family,
    String source) {
  public Chip {
    ram = List.copyOf(ram);
  }

  /** One bank of RAM. */
  public record Bank(String name, Range range) {}
}
