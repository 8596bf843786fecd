package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.HeaterOutput;
import dev.gantrywright.machine.Supply;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeaterFiguresTest {
  private static Heater heater(Double watts, Double volts, Double relayAmps) {
    return new Heater(
        null, null, null, null, watts, volts, null, "BED", null, null, null, null, null, null,
        relayAmps, null, null, Map.of());
  }

  private static Supply supply(Double volts, Double fuse) {
    return new Supply(volts, 15.0, fuse, null, null, Map.of());
  }

  private static Optional<BoardSheet> sheet(double maxAmps) {
    HeaterOutput bed = new HeaterOutput("PA7", maxAmps, 24.0, Map.of());
    return Optional.of(
        new BoardSheet(
            1,
            "b",
            null,
            null,
            null,
            null,
            null,
            null,
            Map.of("BED", bed),
            null,
            null,
            null,
            null));
  }

  @Test
  void aBedOnItsRatedVoltage() {
    HeaterFigures figures =
        HeaterFigures.of(heater(200.0, 24.0, null), supply(24.0, 15.0), sheet(12));
    // R = 24²/200, I = 24/2.88
    assertThat(figures.ohms()).isCloseTo(2.88, within(1e-9));
    assertThat(figures.amps()).isCloseTo(8.3333, within(1e-4));
    assertThat(figures.watts()).isCloseTo(200, within(1e-9));
    assertThat(figures.share(figures.outputAmps())).contains("69.4\u00a0%");
    assertThat(figures.over(figures.outputAmps())).isFalse();
    assertThat(figures.relay()).isFalse();
  }

  @Test
  void twelveVoltPartsOnTwentyFourTakeFourTimesThePower() {
    HeaterFigures figures =
        HeaterFigures.of(heater(40.0, 12.0, null), supply(24.0, 15.0), sheet(5));
    assertThat(figures.watts()).isCloseTo(160, within(1e-9));
    assertThat(figures.amps()).isCloseTo(6.6667, within(1e-4));
    assertThat(figures.over(figures.outputAmps())).isTrue();
  }

  @Test
  void aMainsHeaterTakesNothingFromTheSupply() {
    HeaterFigures figures =
        HeaterFigures.of(heater(750.0, 230.0, 25.0), supply(24.0, 15.0), sheet(12));
    assertThat(figures.mains()).isTrue();
    assertThat(figures.volts()).isEqualTo(230);
    assertThat(figures.amps()).isCloseTo(3.2609, within(1e-4));
    assertThat(figures.fuseAmps()).isNull();
    assertThat(figures.outputAmps()).isNull();
    assertThat(figures.share(figures.relayAmps())).contains("13\u00a0%");
  }

  @Test
  void whatIsNotDescribedStaysOpen() {
    HeaterFigures figures =
        HeaterFigures.of(heater(null, 24.0, null), supply(null, null), Optional.empty());
    assertThat(figures.amps()).isNull();
    assertThat(figures.share(12.0)).isEmpty();
    assertThat(figures.over(12.0)).isFalse();
  }
}
