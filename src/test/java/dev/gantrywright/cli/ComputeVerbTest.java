package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class ComputeVerbTest {

  private static CommandRun compute(String line) {
    return CommandRun.of(("compute " + line).split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | say what to compute: ",
        "steps-per-mm --microsteps 16 | give one drive",
        "steps-per-mm --microsteps 16 --lead 8 --gear-diameter 11 | give one drive",
        "steps-per-mm --microsteps 16 --teeth 20 | --belt-pitch is needed",
        "steps-per-mm --microsteps 16 --belt-pitch 2 | --teeth is needed",
        "steps-per-mm --microsteps 16 --lead 0 | the lead in mm must be above zero, got 0",
        "steps-per-mm --microsteps 16 --lead -8 | must be above zero, got -8",
        "steps-per-mm --microsteps 16 --lead NaN | must be a finite number, got NaN",
        "steps-per-mm --microsteps 16 --lead 8 --ratio 0 | the ratio must be above zero",
        "steps-per-mm --full-steps 200.5 --microsteps 16 --lead 8 | --full-steps is a count: give a whole number, not 200.5",
        "steps-per-mm --microsteps 16.5 --lead 8 | --microsteps is a count: give a whole number",
        "steps-per-mm --microsteps 16 --belt-pitch 2 --teeth 20.5 | --teeth is a count: give a whole number",
        "steps-per-mm --lead 8 | --microsteps",
        "steps-per-mm --microsteps sixteen --lead 8 | 'sixteen' is not a number",
        "baud --uart avr | --baud",
        "baud --uart abacus --baud 9600 | abacus is not known; known are avr, lpc17",
        "baud --uart avr --baud 0 | the baud rate must be above zero, got 0",
        "baud --uart avr --baud -9600 | must be above zero, got -9600",
        "baud --uart avr --baud 9600.5 | '9600.5' is not a whole number",
        "baud --uart avr --baud many | 'many' is not a whole number",
        "baud --uart avr --baud 1e300 | '1e300' is too large",
        "baud --uart avr --baud 9600 --clock 1e18 | below 100 GHz",
        "baud --uart avr --baud 9600 --over8 | --over8 does not fit",
        "baud --uart stm32 --clock 8e6 --baud 9600 --double-speed | --double-speed does not fit",
        "baud --uart stm32 --baud 9600 | --clock is needed",
        "driver-current --driver A1 --vref 1 --sense 0.1 | A1 is not in the catalogue; known are",
        "driver-current --driver A4988 --sense 0.1 | --vref is needed",
        "driver-current --driver A4988 --vref 1 --sense 0 | sense resistor in ohm must be above zero",
        "driver-current --driver A4988 --vref -1 --sense 0.1 | VREF in V must not be below zero",
        "driver-current --driver A4988 --vref 1 --sense 0.1 --scale 3 | --scale does not fit",
        "driver-current --driver A4988 --vref 1 --sense 0.1 --high-sensitivity | has one range",
        "driver-current --driver A4988 --vref 1 --sense 0.1 --global-scaler 9 | has none",
        "driver-current --driver TMC2209 --sense 0.11 | give --scale 0..31, or --vref, or both",
        "driver-current --driver TMC2209 --sense 0.11 --scale 32 | must lie between 0 and 31, got 32",
        "driver-current --driver TMC2209 --sense 0.11 --vref 3 | must lie between 0 and 2.5, got 3",
        "driver-current --driver TMC2660 --sense 0.1 --vref 1 | is set by --scale alone",
        "driver-current --driver TMC2100 --sense 0.1 --vref 1 --high-sensitivity | has one range",
        "driver-current --driver TMC5160 --sense 0.075 --vref 1 | --vref does not fit",
        "driver-current --driver TMC5160 --sense 0.075 | --scale is needed",
        "driver-current --driver TMC5160 --sense 0.075 --scale 31 --global-scaler 0 | 1 and 256",
        "ntc --r25 100000 --beta 3950 | give one of --celsius and --ohms",
        "ntc --r25 100000 --beta 3950 --celsius 1 --ohms 1 | give one of --celsius and --ohms",
        "ntc --celsius 25 | give --r25 with --beta, or --a, --b and --c",
        "ntc --celsius 25 --r25 1 --a 1 | give --r25 with --beta, or --a, --b and --c",
        "ntc --celsius 25 --r25 100000 | --beta is needed",
        "ntc --celsius 25 --beta 3950 | --r25 is needed",
        "ntc --celsius 25 --a 1e-3 --b 2e-4 | --c is needed",
        "ntc --celsius 25 --a 1e-3 --b 0 --c 1e-7 | b must be above zero",
        "ntc --celsius -300 --r25 100000 --beta 3950 | above -273.15",
        "ntc --ohms -5 --r25 100000 --beta 3950 | the resistance in ohm must be above zero, got -5",
        "ntc --ohms 1e-9 --r25 100000 --beta 3950 | no temperature gives this resistance",
        "rtd | give one of --celsius and --ohms",
        "rtd --celsius -201 | must lie between -200 and 850, got -201",
        "rtd --ohms 5 | outside -200 to 850",
        "rtd --ohms 100 --r0 0 | R0 in ohm must be above zero",
        "step-rate --steps-per-mm 80 | --speed",
        "step-rate --steps-per-mm 80 --speed -1 | must not be below zero",
        "endstop --contact XX --input pull-up | --contact XX is not known; known are NO, NC",
        "endstop --contact NO --input up | known are pull-up, pull-down, driven",
        "endstop --contact NO --input pull-up --sensor magic | known are switch, npn, pnp",
        "endstop --contact NO | --input",
        "calibrate --current 80 --commanded 100 --measured 0 | must be above zero, got 0",
        "calibrate --current 80 --commanded 0 --measured 99 | must be above zero, got 0",
        "calibrate --current 80 --commanded 100 --measured 99 --reading-error -1 | below zero",
        "calibrate --current 80 --commanded 100 | --measured",
        "calibrate --current 80 --commanded 100 --measured 98,6 | '98,6' is not a number",
        "rtd --celsius 20 --format yaml | yaml",
        "cosine --angle 3 | cosine",
      })
  void badInputIsOneClearLineAndStatusTwo(String line, String words) {
    CommandRun run = compute(line == null ? "" : line);
    assertThat(run.status()).as(run.out() + run.err()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().strip().lines()).hasSize(1);
    assertThat(run.err()).contains(words).doesNotContain("Exception");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "steps-per-mm --microsteps 16 --lead 8 | stepsPerMm resolutionMm",
        "baud --uart avr --baud 9600 | divisor actualBaud errorPercent",
        "baud --uart lpc17 --baud 9600 | divisor divAdd mul actualBaud errorPercent",
        "baud --uart stm32 --clock 72e6 --baud 9600 | divisor actualBaud errorPercent",
        "driver-current --driver DRV8825 --vref 1 --sense 0.1 | peakAmps rmsAmps",
        "ntc --r25 100000 --beta 3950 --celsius -40 | ohms celsius",
        "rtd --celsius -40 | ohms celsius",
        "step-rate --steps-per-mm 80 --speed 200 | hertz",
        "endstop --contact NO --input pull-up | idleLevel pressedLevel activeLow brokenWireDetected",
        "calibrate --current 80 --commanded 100 --measured 98 | stepsPerMm plusMinus",
      })
  void jsonHasExactlyTheKeysOfItsCalculator(String line, String keys) {
    JsonNode json = compute(line + " --format json").json();
    assertThat(json.propertyNames()).containsExactlyElementsOf(List.of(keys.split(" ")));
  }

  @Test
  void theFormatMayStandBeforeTheCalculator() {
    assertThat(compute("--format json rtd --celsius 0").json().path("ohms").doubleValue())
        .isEqualTo(100);
  }

  @Test
  void levelsAreWordsAndTruthsAreBooleans() {
    JsonNode json = compute("endstop --contact NC --input pull-up --format json").json();
    assertThat(json.path("idleLevel").stringValue()).isEqualTo("low");
    assertThat(json.path("pressedLevel").stringValue()).isEqualTo("high");
    assertThat(json.path("activeLow").isBoolean()).isTrue();
    assertThat(json.path("brokenWireDetected").booleanValue()).isTrue();
  }

  @Test
  void bothScaleAndVrefMultiply() {
    double both =
        compute("driver-current --driver TMC2209 --sense 0.11 --scale 15 --vref 1.25 --format json")
            .json()
            .path("rmsAmps")
            .doubleValue();
    assertThat(both).isCloseTo(0.25 * 0.325 / 0.13 / Math.sqrt(2), within(1e-12));
  }

  @Test
  void everyCalculatorHasHelp() {
    for (String what :
        List.of(
            "steps-per-mm",
            "baud",
            "driver-current",
            "ntc",
            "rtd",
            "step-rate",
            "endstop",
            "calibrate")) {
      CommandRun run = compute(what + " --help");
      assertThat(run.status()).isZero();
      assertThat(run.out()).contains("compute " + what).contains("--format");
    }
  }
}
