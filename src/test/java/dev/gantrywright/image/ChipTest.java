package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import org.junit.jupiter.api.Test;

/** The catalogue's rows in the form that the checks use. */
class ChipTest {
  private static Chip chip(String part) {
    return Chip.of(Catalog.shipped().mcu(part).orElseThrow());
  }

  @Test
  void rowsBecomeChips() {
    Chip f405 = chip("STM32F405RG");
    assertThat(f405.core()).isEqualTo(Core.ARM_V7M);
    assertThat(f405.flash()).isEqualTo(Range.of(0x08000000L, 1 << 20));
    assertThat(f405.uf2Families()).contains(0x57755A57L, 0x6D0922FAL);
    assertThat(f405.preambleBytes()).isZero();
    assertThat(chip("RP2040").preambleBytes()).isEqualTo(256);
    assertThat(chip("RP2040").core()).isEqualTo(Core.ARM_V6M);
    assertThat(chip("ATmega2560").core()).isEqualTo(Core.AVR);
    assertThat(chip("ESP32").core()).isEqualTo(Core.XTENSA);
  }

  @Test
  void everyArmPartHasRamForAStackAndAKnownCore() {
    for (Mcu mcu : Catalog.shipped().mcus()) {
      Chip chip = Chip.of(mcu);
      assertThat(chip.core()).as(mcu.part()).isNotEqualTo(Core.OTHER);
      assertThat(chip.ram()).as(mcu.part()).isNotEmpty();
      assertThat(chip.flash().size()).as(mcu.part()).isPositive();
    }
  }

  @Test
  void banksThatTouchHoldOneRangeTogether() throws BrokenImage {
    Image image = CortexProgram.f405(0).read();
    Examination e = Examination.of(image, chip("RP2040"), Loader.none(), Circumstances.unknown());
    assertThat(e.ramHolds(new Range(0x20000000L, 0x20042000L))).isTrue();
    assertThat(e.ramHolds(new Range(0x20000000L, 0x20042001L))).isFalse();
  }

  @Test
  void tableArithmeticFollowsTheManual() {
    assertThat(VectorTable.alignment(16)).isEqualTo(128);
    assertThat(VectorTable.alignment(21)).isEqualTo(256);
    assertThat(VectorTable.alignment(82)).isEqualTo(512);
    assertThat(VectorTable.bytes(82)).isEqualTo(392);
  }
}
