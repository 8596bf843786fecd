package dev.gantrywright.image;

import dev.gantrywright.catalog.Mcu;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;

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
 * @param interrupts interrupt lines of a Cortex-M part, where known
 * @param uf2Families family numbers that its UF2 loader may take, the part's own first; empty where
 *     none is registered
 * @param source where these figures come from
 */
public record Chip(
    String part,
    String family,
    Core core,
    Range flash,
    long preambleBytes,
    List<Bank> ram,
    OptionalInt interrupts,
    List<Long> uf2Families,
    String source) {
  public Chip {
    ram = List.copyOf(ram);
    uf2Families = List.copyOf(uf2Families);
  }

  /** The catalogue's facts in the form that the checks use. */
  public static Chip of(Mcu mcu) {
    return new Chip(
        mcu.part(),
        mcu.family(),
        Core.named(mcu.core()),
        new Range(mcu.flashBase(), mcu.flashEnd()),
        mcu.bootAddress() - mcu.flashBase(),
        mcu.ram().stream().map(b -> new Bank(b.name(), Range.of(b.base(), b.bytes()))).toList(),
        mcu.interrupts(),
        LongStream.concat(mcu.uf2Family().stream(), mcu.familyFacts().uf2Family().stream())
            .distinct()
            .boxed()
            .toList(),
        mcu.source());
  }

  /** One bank of RAM. */
  public record Bank(String name, Range range) {}
}
