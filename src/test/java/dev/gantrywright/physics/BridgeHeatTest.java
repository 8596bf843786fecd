package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BridgeHeatTest {
  @Test
  void fourTransistorsCarryTheCurrent() {
    // By hand: 4 x 0.32 Ω x 1.4 = 1.792 Ω; at 1 A RMS 1.792 W, at 1.5 A RMS 4.032 W.
    assertThat(BridgeHeat.watts(1, 0.32)).isCloseTo(1.792, within(1e-9));
    assertThat(BridgeHeat.watts(1.5, 0.32)).isCloseTo(4.032, within(1e-9));
    assertThat(BridgeHeat.watts(0, 0.32)).isZero();
  }

  @Test
  void theCurrentForATemperatureUndoesIt() {
    double amps = BridgeHeat.ampsFor(100, 32, 0.32);
    // By hand: sqrt(100 / 32 / 1.792) = 1.3206 A.
    assertThat(amps).isCloseTo(1.3206, within(1e-4));
    assertThat(BridgeHeat.watts(amps, 0.32) * 32).isCloseTo(100, within(1e-9));
  }
}
