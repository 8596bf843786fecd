package dev.gantrywright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogTest {
  private static final Catalog CATALOG = Catalog.shipped();

  static Stream<Mcu> mcus() {
    return CATALOG.mcus().stream();
  }

  static Stream<DriverIc> drivers() {
    return CATALOG.drivers().stream();
  }

  @ParameterizedTest
  @MethodSource("mcus")
  void everyPartIsPlausible(Mcu mcu) {
    assertThat(mcu.partSource()).isNotBlank();
    assertThat(mcu.familyFacts().source()).isNotBlank();
    assertThat(mcu.flashBytes()).isBetween(16L << 10, 16L << 20);
    assertThat(mcu.flashBytes() % 1024).isZero();
    assertThat(mcu.ram()).isNotEmpty().allMatch(bank -> bank.bytes() >= 512);
    assertThat(mcu.ramBytes()).isBetween(512L, 2L << 20);
    assertThat(mcu.clockHz()).isBetween(8_000_000L, 600_000_000L);
    assertThat(mcu.uartClocksHz()).isNotEmpty().allMatch(hz -> hz <= mcu.clockHz());
    assertThat(mcu.uarts()).isBetween(1, 16);
    assertThat(mcu.ioVolts()).isIn(3.3, 5.0);
    assertThat(mcu.inputToleranceVolts()).isBetween(mcu.ioVolts(), 6.0);
    assertThat(mcu.adcBits()).isBetween(10, 16);
    assertThat(mcu.uartKind()).isIn("avr", "lpc17", "stm32", "rp2040", "sam", "samd", "esp32");
    assertThat(mcu.pullUp()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("mcus")
  void theBanksOfOnePartDoNotOverlap(Mcu mcu) {
    List<RamBank> banks = mcu.ram();
    for (int i = 0; i < banks.size(); i++) {
      for (int j = i + 1; j < banks.size(); j++) {
        RamBank a = banks.get(i);
        RamBank b = banks.get(j);
        assertThat(a.end() <= b.base() || b.end() <= a.base())
            .as("%s: %s and %s", mcu.part(), a, b)
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("mcus")
  void aPartIsFoundByItsOwnNumberAndNoOther(Mcu mcu) {
    assertThat(CATALOG.mcu(mcu.part())).contains(mcu);
    assertThat(CATALOG.mcu(mcu.part().toLowerCase(java.util.Locale.ROOT))).contains(mcu);
    for (String alias : mcu.aliases()) {
      assertThat(CATALOG.mcu(alias)).contains(mcu);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "STM32F405RGT6, STM32F405RG",
    "stm32f405rgt6, STM32F405RG",
    "STM32F405RGTx, STM32F405RG",
    "STM32F103C8T6, STM32F103C8",
    "STM32F103RCT6TR, STM32F103RC",
    "STM32H743ZIT6, STM32H743ZI",
    "ATmega2560-16AU, ATmega2560",
    "ATMEGA1284P-PU, ATmega1284P",
    "LPC1768FBD100, LPC1768",
    "' LPC1769FBD100,551 ', LPC1769",
    "ATSAM3X8EA-AU, AT91SAM3X8E",
    "SAM3X8E, AT91SAM3X8E",
    "ATSAMD51J19A-AU, ATSAMD51J19",
    "RP2040B2, RP2040",
    "ESP32-WROOM-32E, ESP32",
  })
  void packageLettersAndCaseAreNoObstacle(String number, String part) {
    assertThat(CATALOG.mcu(number)).map(Mcu::part).contains(part);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "STM32", "STM32F405", "LPC17", "ATmega328PB", "STM32F405RX", "banana"})
  void whatIsNoPartIsNotFound(String number) {
    assertThat(CATALOG.mcu(number)).isEmpty();
  }

  @Test
  void oneRamSizeMisleads() {
    Mcu f405 = CATALOG.mcu("STM32F405RG").orElseThrow();
    assertThat(f405.ramBytes()).isEqualTo(192 << 10);
    assertThat(f405.largestRam().bytes()).isEqualTo(128 << 10);
    assertThat(f405.ramAt(0x10000000L)).map(RamBank::cpuOnly).contains(true);
    assertThat(f405.ramAt(0x2001FFFFL)).map(RamBank::name).contains("SRAM");
    assertThat(f405.ramAt(0x20020000L)).isEmpty();
    assertThat(f405.flashEnd()).isEqualTo(0x08100000L);
  }

  @ParameterizedTest
  @MethodSource("drivers")
  void everyDriverIsPlausible(DriverIc driver) {
    assertThat(driver.source()).isNotBlank();
    assertThat(driver.microsteps()).isNotEmpty().allMatch(n -> Integer.bitCount(n) == 1);
    assertThat(driver.supplyLeastVolts()).isBetween(2.0, 13.0);
    assertThat(driver.supplyMostVolts()).isBetween(20.0, 60.0);
    assertThat(driver.maxStepHertz()).isBetween(1e5, 1e7);
    assertThat(driver.uartAddresses() > 0)
        .isEqualTo(driver.logic().equals("uart") || driver.uartAddresses() == 255);
    if (driver.peakAmps().isPresent()) {
      assertThat(driver.rmsAmps().orElseThrow()).isLessThan(driver.peakAmps().getAsDouble());
    }
    if (driver.current().kind() == CurrentRule.Kind.VREF) {
      assertThat(driver.current().gain()).isPositive();
    } else {
      assertThat(driver.current().fullScaleVolts()).isBetween(0.1, 0.5);
    }
    assertThat(CATALOG.driver(driver.ic())).contains(driver);
  }

  @Test
  void driversAreFoundWithPackageLetters() {
    assertThat(CATALOG.driver("tmc2209-la")).map(DriverIc::ic).contains("TMC2209");
    assertThat(CATALOG.driver("A4988SETTR-T")).map(DriverIc::ic).contains("A4988");
    assertThat(CATALOG.driver("TMC22")).isEmpty();
    assertThat(CATALOG.driver("TMC22099")).isEmpty();
  }

  @Test
  void theSameJumpersMeanOtherMicrostepsOnOtherIcs() {
    assertThat(CATALOG.driver("A4988").orElseThrow().pinMicrosteps()).containsEntry("HHH", 16);
    assertThat(CATALOG.driver("DRV8825").orElseThrow().pinMicrosteps()).containsEntry("HHH", 32);
    assertThat(CATALOG.driver("TMC2208").orElseThrow().pinMicrosteps()).containsEntry("LH", 4);
    assertThat(CATALOG.driver("TMC2209").orElseThrow().pinMicrosteps()).containsEntry("LH", 64);
  }

  @Test
  void beltsScrewsAndFramesSayWhereTheyStand() {
    assertThat(CATALOG.belts()).allMatch(belt -> belt.pitchMm() > 1 && !belt.source().isBlank());
    assertThat(CATALOG.screws())
        .allMatch(screw -> screw.pitchMm() > 0.1 && !screw.source().isBlank());
    assertThat(CATALOG.frames())
        .allMatch(frame -> frame.boltSpacingMm() > 10 && !frame.source().isBlank());
    assertThat(CATALOG.belt("t2.5")).map(Belt::pitchMm).contains(2.5);
    assertThat(CATALOG.screw("tr8×1.5")).map(Screw::standard).contains("ISO 2904");
    assertThat(CATALOG.screw("Tr8x2")).map(Screw::standard).contains("none");
  }

  @Test
  void namesAreUnique() {
    assertThat(CATALOG.mcus()).extracting(Mcu::part).doesNotHaveDuplicates();
    assertThat(CATALOG.drivers()).extracting(DriverIc::ic).doesNotHaveDuplicates();
    assertThat(CATALOG.belts()).extracting(Belt::designation).doesNotHaveDuplicates();
    assertThat(CATALOG.screws()).extracting(Screw::designation).doesNotHaveDuplicates();
  }
}
