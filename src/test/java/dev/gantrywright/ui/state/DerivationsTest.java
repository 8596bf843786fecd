package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DerivationsTest {
  private final PrinterProfile heron;

  DerivationsTest() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "axes.x.stepsPerMm      | 200 × 16 / (2 × 20) = 80",
        "axes.x.motor.fullSteps | 1.8° a step",
        "axes.y.maxSpeed        | 16 kHz step rate",
        "axes.y.acceleration    | at top speed after 13.3 mm",
        "axes.x.travelMax       | 220 mm of travel",
        "axes.x.driver.current  | 53.3 % of rated",
        "axes.x.drive.teeth     | 40 mm a turn",
        "heaters.bed.watts      | 8.33 A · 2.88 Ω warm",
        "supply.amps            | 360 W",
        "serial.baud            | 4 µs a bit",
      })
  void whatFollowsStandsBesideTheField(String path, String expected) {
    assertThat(Derivations.beside(heron, path)).contains(expected);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "name",
        "axes.e.travelMax",
        "axes.q.stepsPerMm",
        "heaters.none.watts",
        "axes.x.driver.ic"
      })
  void whereNothingFollowsNothingStands(String path) {
    assertThat(Derivations.beside(heron, path)).isEmpty();
  }

  @Test
  void aMeasuredResistanceIsShownAsPower() throws Exception {
    PrinterProfile measured = ProfileValues.with(heron, "heaters.hotend.ohms", 3.6);
    assertThat(Derivations.beside(measured, "heaters.hotend.ohms")).contains("160 W at 24 V");
    assertThat(Derivations.beside(heron, "heaters.hotend.ohms")).isEmpty();
  }
}
