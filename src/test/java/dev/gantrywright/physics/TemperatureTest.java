package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureTest {
  private static final SteinhartHart TEN_K = new SteinhartHart(1.129148e-3, 2.34125e-4, 8.76741e-8);

  private static void refuses(ThrowingCallable... calls) {
    for (ThrowingCallable call : List.of(calls)) {
      assertThatThrownBy(call).isInstanceOf(OutOfDomain.class);
    }
  }

  /** IEC 60751 table, Pt100. */
  @ParameterizedTest
  @CsvSource({
    "-200, 18.52",
    "-100, 60.26",
    "-50, 80.31",
    "0, 100",
    "50, 119.40",
    "100, 138.51",
    "400, 247.09",
    "600, 313.71",
    "850, 390.48"
  })
  void platinum(double celsius, double ohms) {
    assertThat(PlatinumRtd.ohms(100, celsius)).isCloseTo(ohms, within(0.0055));
    assertThat(PlatinumRtd.ohms(1000, celsius)).isCloseTo(ohms * 10, within(0.055));
    assertThat(PlatinumRtd.celsius(100, ohms)).isCloseTo(celsius, within(0.03));
    assertThat(PlatinumRtd.celsius(100, PlatinumRtd.ohms(100, celsius)))
        .isCloseTo(celsius, within(1e-9));
  }

  @Test
  void platinumKnowsItsEnds() {
    assertThat(PlatinumRtd.toleranceCelsius(0.15, 0.002, -200)).isCloseTo(0.55, within(1e-12));
    refuses(
        () -> PlatinumRtd.ohms(0, 0),
        () -> PlatinumRtd.ohms(100, -200.1),
        () -> PlatinumRtd.ohms(100, 850.1),
        () -> PlatinumRtd.celsius(0, 100),
        () -> PlatinumRtd.celsius(100, 0),
        () -> PlatinumRtd.celsius(100, 18.4),
        () -> PlatinumRtd.celsius(100, 390.6));
  }

  @Test
  void ntcByBeta() {
    assertThat(Ntc.ohms(100_000, 3950, 25)).isEqualTo(100_000);
    assertThat(Ntc.ohms(100_000, 3950, 200)).isCloseTo(744.613, within(0.01));
    assertThat(Ntc.celsius(100_000, 3950, 744.613)).isCloseTo(200, within(0.001));
    assertThat(Ntc.ratio(3988, 50, 25)).isCloseTo(0.3603, within(0.01));
    assertThat(Ntc.ratio(3988, 25, 50)).isCloseTo(1 / Ntc.ratio(3988, 50, 25), within(1e-9));
    assertThat(Ntc.celsiusOfRatio(3492, 0.0029952, 25)).isCloseTo(318.566, within(0.001));
    assertThat(Ntc.beta(1, 25, 0.067168, 100)).isCloseTo(4006, within(1.0));
    assertThat(Ntc.nearPoint(1, 4.4, 25, 27)).isCloseTo(0.916298, within(1e-6));
    assertThat(Ntc.nearPoint(2, 4.4, 25, 25)).isEqualTo(2);
    refuses(
        () -> Ntc.ohms(0, 3950, 25),
        () -> Ntc.ohms(1, 0, 25),
        () -> Ntc.ohms(1, 3950, -273.15),
        () -> Ntc.ohms(1, 3950, Double.NaN),
        () -> Ntc.celsius(0, 3950, 1),
        () -> Ntc.celsius(1, 0, 1),
        () -> Ntc.celsius(1, 3950, 0),
        () -> Ntc.celsius(1e5, 3950, 1e-3),
        () -> Ntc.celsiusOfRatio(3950, 0, 25),
        () -> Ntc.beta(0, 0, 1, 1),
        () -> Ntc.beta(1, 0, 0, 1),
        () -> Ntc.beta(1, 25, 2, 25),
        () -> Ntc.nearPoint(0, 4, 25, 27));
    assertThat(Ntc.ohms(1, 3950, -273.14)).isPositive();
  }

  @Test
  void steinhartHart() {
    assertThat(TEN_K.celsius(10_000)).isCloseTo(25, within(0.006));
    assertThat(TEN_K.celsius(3603)).isCloseTo(49.99, within(0.006));
    assertThat(TEN_K.ohms(25)).isCloseTo(10_000, within(1.0));
    for (int t = -40; t <= 300; t += 20) {
      assertThat(TEN_K.celsius(TEN_K.ohms(t))).isCloseTo(t, within(1e-8));
    }
    SteinhartHart straight = new SteinhartHart(1e-3, 2.5e-4, 0);
    assertThat(straight.celsius(straight.ohms(60))).isCloseTo(60, within(1e-9));
    refuses(
        () -> new SteinhartHart(1e-3, 0, 0),
        () -> new SteinhartHart(Double.NaN, 1, 0),
        () -> new SteinhartHart(1e-3, 1e-4, Double.NaN),
        () -> TEN_K.celsius(0));
  }

  @Test
  void steinhartHartThroughThreePoints() {
    SteinhartHart fit =
        SteinhartHart.through(TEN_K.ohms(0), 0, TEN_K.ohms(50), 50, TEN_K.ohms(100), 100);
    assertThat(fit.a()).isCloseTo(TEN_K.a(), within(1e-9));
    assertThat(fit.b()).isCloseTo(TEN_K.b(), within(1e-9));
    assertThat(fit.c()).isCloseTo(TEN_K.c(), within(1e-12));
    refuses(
        () -> SteinhartHart.through(2, 0, 2, 50, 1, 100),
        () -> SteinhartHart.through(2, 0, 1, 50, 2, 100),
        () -> SteinhartHart.through(2, 0, 1, 50, 1, 100),
        () -> SteinhartHart.through(2, 0, 1, 50, 0.5, 100),
        () -> SteinhartHart.through(0, 0, 1, 50, 0.5, 100));
  }

  @Test
  void aFitOverRatiosMayTurnAndSaysSo() {
    SteinhartHart fit = SteinhartHart.through(1.0, 25, 0.030166, 150, 0.0029952, 300);
    assertThat(fit.c()).isNegative();
    assertThat(fit.celsius(0.011999)).isCloseTo(200, within(0.6));
    assertThat(fit.ohms(300)).isCloseTo(0.0029952, within(1e-9));
    assertThat(fit.ohms(25)).isCloseTo(1.0, within(1e-9));
    refuses(() -> fit.ohms(-270));
    // With b 3, c -1 and a 0 the curve turns where ln R is 1, at 1/T of 2.
    SteinhartHart turning = new SteinhartHart(0, 3, -1);
    assertThat(turning.ohms(1 / 1.99 - 273.15)).isCloseTo(2.564, within(0.01));
    refuses(() -> turning.ohms(1 / 2.01 - 273.15));
  }

  @Test
  void materialCurve() {
    assertThat(MaterialCurve.TYPE_1.ratio(-40)).isCloseTo(33.36, within(0.01));
    assertThat(MaterialCurve.TYPE_1.ratio(135)).isCloseTo(0.0264, within(0.0001));
    assertThat(MaterialCurve.TYPE_1.celsius(0.06781)).isCloseTo(100, within(0.02));
    refuses(
        () -> MaterialCurve.TYPE_1.ratio(-41),
        () -> MaterialCurve.TYPE_1.ratio(156),
        () -> MaterialCurve.TYPE_1.celsius(0));
  }

  @Test
  void ratioTable() {
    RatioTable table = new RatioTable(Map.of(0.0, 3.265, 25.0, 1.0, 50.0, 0.3603, 100.0, 0.068));
    assertThat(table.ratio(0)).isEqualTo(3.265);
    assertThat(table.ratio(25)).isEqualTo(1);
    assertThat(table.ratio(100)).isEqualTo(0.068);
    assertThat(table.ratio(75)).isCloseTo(0.1481, within(0.003));
    assertThat(table.celsius(3.265)).isCloseTo(0, within(1e-9));
    assertThat(table.celsius(0.3603)).isCloseTo(50, within(1e-9));
    assertThat(table.celsius(0.068)).isCloseTo(100, within(1e-9));
    for (int t = 0; t <= 100; t += 5) {
      assertThat(table.celsius(table.ratio(t))).isCloseTo(t, within(1e-9));
    }
    refuses(
        () -> table.ratio(-1),
        () -> table.ratio(101),
        () -> table.celsius(3.3),
        () -> table.celsius(0.06),
        () -> new RatioTable(Map.of(25.0, 1.0)),
        () -> new RatioTable(Map.of(25.0, 1.0, 50.0, 1.0)),
        () -> new RatioTable(Map.of(25.0, 1.0, 50.0, 0.0)),
        () -> new RatioTable(Map.of(-300.0, 1.0, 50.0, 0.5)));
  }

  /** MAX31865 data sheet Table 9. */
  @Test
  void ratioConverter() {
    assertThat(RatioConverter.code(138.51, 400)).isEqualTo(11346);
    assertThat(RatioConverter.code(500, 400)).isEqualTo(32767);
    assertThat(RatioConverter.code(0, 400)).isZero();
    assertThat(RatioConverter.ohms(11346, 400)).isCloseTo(138.501, within(0.001));
    assertThat(RatioConverter.quickCelsius(8192)).isZero();
    assertThat(RatioConverter.quickCelsius(11346)).isCloseTo(98.56, within(0.006));
    refuses(
        () -> RatioConverter.code(-1, 400),
        () -> RatioConverter.code(1, 0),
        () -> RatioConverter.ohms(-1, 400),
        () -> RatioConverter.ohms(32768, 400),
        () -> RatioConverter.ohms(1, 0),
        () -> RatioConverter.quickCelsius(-1));
  }

  @Test
  void adcDivider() {
    assertThat(AdcDivider.counts(4700, 4700, 10)).isEqualTo(512);
    assertThat(AdcDivider.counts(0, 4700, 10)).isZero();
    assertThat(AdcDivider.sensorOhms(512, 4700, 10)).isEqualTo(4700);
    assertThat(AdcDivider.sensorOhms(122, 4700, 10)).isCloseTo(635.698, within(0.001));
    assertThat(AdcDivider.countsOfVolts(1.25, 5, 10)).isEqualTo(256);
    // Centred difference of the reading around 250 °C.
    double up = AdcDivider.counts(Ntc.ohms(1e5, 3950, 250.005), 4700, 12);
    double down = AdcDivider.counts(Ntc.ohms(1e5, 3950, 249.995), 4700, 12);
    assertThat(AdcDivider.kelvinPerCount(1e5, 3950, 250, 4700, 12))
        .isCloseTo(0.01 / (down - up), within(1e-5));
    refuses(
        () -> AdcDivider.counts(-1, 1, 10),
        () -> AdcDivider.counts(1, 0, 10),
        () -> AdcDivider.counts(1, 1, 0),
        () -> AdcDivider.counts(1, 1, 33),
        () -> AdcDivider.sensorOhms(-1, 1, 10),
        () -> AdcDivider.sensorOhms(1024, 1, 10),
        () -> AdcDivider.sensorOhms(1, 0, 10),
        () -> AdcDivider.countsOfVolts(-1, 1, 10),
        () -> AdcDivider.countsOfVolts(1, 0, 10),
        () -> AdcDivider.kelvinPerCount(1e5, 3950, 250, 0, 12));
    assertThat(AdcDivider.sensorOhms(0, 1, 10)).isZero();
  }

  @Test
  void thermocoupleAmplifier() {
    assertThat(ThermocoupleAmplifier.volts(250, 1.25)).isEqualTo(2.5);
    assertThat(ThermocoupleAmplifier.celsius(2.5, 1.25)).isEqualTo(250);
  }
}
