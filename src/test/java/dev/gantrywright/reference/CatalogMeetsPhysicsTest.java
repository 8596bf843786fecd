package dev.gantrywright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.catalog.NtcCurve;
import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.physics.Ntc;
import dev.gantrywright.physics.RatioTable;
import dev.gantrywright.physics.UartKind;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The catalogue's words are ones that physics understands, and its tables are ones it can read. */
class CatalogMeetsPhysicsTest {
  private static final Catalog CATALOG = Catalog.shipped();

  static Stream<Mcu> mcus() {
    return CATALOG.mcus().stream();
  }

  static Stream<NtcCurve> curves() {
    return CATALOG.ntcCurves().stream();
  }

  static Stream<Sensor> sensors() {
    return CATALOG.sensors().stream();
  }

  @ParameterizedTest
  @MethodSource("mcus")
  void everyUartKindHasItsGenerator(Mcu mcu) {
    UartKind kind = UartKind.of(mcu.uartKind()).orElseThrow();
    for (long clock : mcu.uartClocksHz()) {
      assertThat(Math.abs(kind.best(clock, 9600).errorPercent())).isLessThan(1);
    }
  }

  @ParameterizedTest
  @MethodSource("curves")
  void everyThermistorTableFallsAndGoesThereAndBack(NtcCurve curve) {
    assertThat(curve.source()).isNotBlank();
    RatioTable table = new RatioTable(curve.ratioByCelsius());
    assertThat(curve.ratioByCelsius()).containsEntry(25.0, 1.0);
    curve
        .ratioByCelsius()
        .forEach((t, ratio) -> assertThat(table.celsius(ratio)).isCloseTo(t, within(1e-6)));
  }

  @ParameterizedTest
  @MethodSource("sensors")
  void everySensorIsPlausible(Sensor sensor) {
    assertThat(sensor.source()).isNotBlank();
    assertThat(sensor.leastCelsius()).isLessThan(0);
    assertThat(sensor.mostCelsius()).isBetween(100.0, 850.0);
    assertThat(CATALOG.sensor(sensor.id())).contains(sensor);
    assertThat(sensor.betaKelvin().isPresent()).isEqualTo(sensor.kind() == Sensor.Kind.NTC);
    sensor.betaKelvin().ifPresent(beta -> assertThat(beta).isBetween(3000.0, 5000.0));
    sensor.curve().ifPresent(curve -> assertThat(CATALOG.ntcCurve(curve)).isPresent());
  }

  @Test
  void theBetaOfATableIsThatOfItsSensor() {
    Sensor sensor = CATALOG.sensor("b57861s-10k").orElseThrow();
    NtcCurve curve = CATALOG.ntcCurve(sensor.curve().orElseThrow()).orElseThrow();
    double beta = Ntc.beta(1, 25, curve.ratioByCelsius().get(100.0), 100);
    assertThat(beta).isCloseTo(sensor.betaKelvin().orElseThrow(), within(5.0));
  }

  @Test
  void conductorsCarryMoreWhenThickerAndLessWhenWarmer() {
    assertThat(CATALOG.ampacities()).allMatch(row -> row.amps() > 0 && !row.source().isBlank());
    for (String method : new String[] {"B2", "C"}) {
      for (double t : new double[] {30, 40, 45, 50, 55}) {
        assertThat(amps(1.5, method, t)).isLessThan(amps(2.5, method, t));
        assertThat(amps(2.5, method, t)).isLessThan(amps(4, method, t));
      }
      assertThat(amps(2.5, method, 30)).isGreaterThan(amps(2.5, method, 55));
    }
    assertThat(CATALOG.platinumClasses()).extracting("name").containsExactly("AA", "A", "B", "C");
  }

  private static double amps(double area, String method, double celsius) {
    return CATALOG.ampacity(area, method, celsius).orElseThrow().amps();
  }
}
