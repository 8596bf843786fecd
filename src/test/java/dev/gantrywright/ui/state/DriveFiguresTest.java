package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DriveFiguresTest {
  private PrinterProfile heron;

  @BeforeEach
  void open() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
  }

  /** Steps of a turn over travel of a turn, by definition. */
  @Test
  void beltScrewAndWheelGiveTheirStepsPerMm() {
    assertThat(DriveFigures.stepsPerMm(heron.axes().get("x"))).contains(80.0);
    assertThat(DriveFigures.stepsPerMm(heron.axes().get("z"))).contains(400.0);
    assertThat(DriveFigures.stepsPerMm(heron.axes().get("e")).orElseThrow())
        .isCloseTo(200 * 16 * 3 / (Math.PI * 7.36), within(1e-9));
  }

  @Test
  void theFormulaStandsWithItsFigures() {
    assertThat(DriveFigures.formula(heron.axes().get("x"))).contains("200 × 16 / (2 × 20) = 80");
    assertThat(DriveFigures.formula(heron.axes().get("z"))).contains("200 × 16 / 8 = 400");
    assertThat(DriveFigures.formula(heron.axes().get("e")))
        .contains("200 × 16 × 3 / (π × 7.36) ≈ 415.19");
  }

  @Test
  void aMissingFigureLeavesNoFormula() throws Exception {
    PrinterProfile less = ProfileValues.with(heron, "axes.x.drive.teeth", null);
    assertThat(DriveFigures.formula(less.axes().get("x"))).isEmpty();
    assertThat(DriveFigures.words(less.axes().get("x"))).isEqualTo("3200 microsteps a turn");
  }

  @Test
  void wordsNameTravelStepsAndResolution() {
    assertThat(DriveFigures.words(heron.axes().get("x")))
        .isEqualTo("40 mm a turn  ·  3200 microsteps a turn  ·  12.5 µm a microstep");
  }
}
