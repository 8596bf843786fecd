package dev.gantrywright.image;

import java.util.List;
import java.util.OptionalInt;

/** Controllers for tests; figures as in the data sheets. */
final class TestChips {
  static final Chip F405 =
      new Chip(
          "STM32F405RG",
          "STM32F4",
          Core.ARM_V7M,
          Range.of(0x08000000L, 1 << 20),
          0,
          List.of(
              new Chip.Bank("main", Range.of(0x20000000L, 128 << 10)),
              new Chip.Bank("core-coupled", Range.of(0x10000000L, 64 << 10))),
          OptionalInt.of(82),
          List.of(0x6D0922FAL, 0x57755A57L),
          "data sheet");
  static final Chip LPC1769 =
      new Chip(
          "LPC1769",
          "LPC17xx",
          Core.ARM_V7M,
          Range.of(0, 512 << 10),
          0,
          List.of(
              new Chip.Bank("local", Range.of(0x10000000L, 32 << 10)),
              new Chip.Bank("AHB", Range.of(0x2007C000L, 32 << 10))),
          OptionalInt.empty(),
          List.of(),
          "data sheet");
  static final Chip RP2040 =
      new Chip(
          "RP2040",
          "RP2040",
          Core.ARM_V6M,
          Range.of(0x10000000L, 2 << 20),
          256,
          List.of(new Chip.Bank("SRAM", Range.of(0x20000000L, 264 << 10))),
          OptionalInt.of(26),
          List.of(0xE48BFF56L),
          "data sheet");
  static final Chip MEGA2560 =
      new Chip(
          "ATmega2560",
          "AVR",
          Core.AVR,
          Range.of(0, 256 << 10),
          0,
          List.of(new Chip.Bank("SRAM", Range.of(0x200, 8 << 10))),
          OptionalInt.empty(),
          List.of(),
          "data sheet");

  private TestChips() {}
}
