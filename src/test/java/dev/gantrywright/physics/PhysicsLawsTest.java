package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Laws: what goes there and back is unchanged, what rises rises, the nearest is nearest. */
class PhysicsLawsTest {
  @Property
  void platinumThereAndBack(@ForAll @DoubleRange(min = -200, max = 850) double celsius) {
    assertThat(PlatinumRtd.celsius(100, PlatinumRtd.ohms(100, celsius)))
        .isCloseTo(celsius, within(1e-6));
  }

  @Property
  void platinumRises(
      @ForAll @DoubleRange(min = -200, max = 849) double celsius,
      @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
    assertThat(PlatinumRtd.ohms(1000, celsius + more))
        .isGreaterThan(PlatinumRtd.ohms(1000, celsius));
  }

  @Property
  void ntcThereAndBack(
      @ForAll @DoubleRange(min = -60, max = 400) double celsius,
      @ForAll @DoubleRange(min = 2000, max = 6000) double beta,
      @ForAll @DoubleRange(min = 100, max = 1e6) double r25) {
    assertThat(Ntc.celsius(r25, beta, Ntc.ohms(r25, beta, celsius)))
        .isCloseTo(celsius, within(1e-6));
  }

  @Property
  void ntcFalls(
      @ForAll @DoubleRange(min = -60, max = 399) double celsius,
      @ForAll @DoubleRange(min = 0.01, max = 1) double more,
      @ForAll @DoubleRange(min = 2000, max = 6000) double beta) {
    assertThat(Ntc.ohms(1e5, beta, celsius + more)).isLessThan(Ntc.ohms(1e5, beta, celsius));
  }

  @Property
  void betaOfTwoPointsGivesThemBack(
      @ForAll @DoubleRange(min = 2000, max = 6000) double beta,
      @ForAll @DoubleRange(min = 50, max = 300) double celsius) {
    assertThat(Ntc.beta(1, 25, Ntc.ratio(beta, celsius, 25), celsius))
        .isCloseTo(beta, within(1e-6));
  }

  @Property
  void steinhartHartThereAndBack(
      @ForAll @DoubleRange(min = -50, max = 350) double celsius,
      @ForAll @DoubleRange(min = 0, max = 2) double tenMillionthsOfC) {
    SteinhartHart curve = new SteinhartHart(1.1e-3, 2.3e-4, tenMillionthsOfC * 1e-7);
    assertThat(curve.celsius(curve.ohms(celsius))).isCloseTo(celsius, within(1e-5));
  }

  @Property
  void dividerThereAndBack(
      @ForAll @DoubleRange(min = 1, max = 1e6) double sensor,
      @ForAll @DoubleRange(min = 100, max = 1e5) double pullUp,
      @ForAll @IntRange(min = 8, max = 16) int bits) {
    double counts = AdcDivider.counts(sensor, pullUp, bits);
    assertThat(AdcDivider.sensorOhms(counts, pullUp, bits))
        .isCloseTo(sensor, within(sensor * 1e-6));
  }

  @Property
  void avrNeighboursAreNotNearer(
      @ForAll @LongRange(min = 1_000_000, max = 20_000_000) long clock,
      @ForAll @LongRange(min = 1200, max = 100_000) long baud,
      @ForAll boolean u2x) {
    BaudSetting setting = AvrUart.setting(clock, baud, u2x);
    int ubrr = (int) setting.divisor();
    double wanted = (double) clock / ((u2x ? 8 : 16) * baud);
    Assume.that(ubrr > 0 && ubrr < 4095);
    assertThat(Math.abs(ubrr + 1 - wanted)).isLessThanOrEqualTo(0.5);
    assertThat(setting.actualBaud()).isEqualTo(AvrUart.baud(clock, ubrr, u2x));
  }

  @Property
  void stm32DivisorIsTheNearestStep(
      @ForAll @LongRange(min = 8_000_000, max = 140_000_000) long clock,
      @ForAll @LongRange(min = 2400, max = 1_000_000) long baud,
      @ForAll boolean over8) {
    BaudSetting setting = Stm32Uart.setting(clock, baud, over8);
    double parts = over8 ? 8 : 16;
    double wanted = (double) clock / baud;
    Assume.that(wanted >= parts && wanted <= 32767);
    assertThat(Math.abs(setting.divisor() * parts - wanted)).isLessThanOrEqualTo(0.5);
    assertThat(setting.divisor() * parts).isEqualTo(Math.rint(setting.divisor() * parts));
  }

  @Property(tries = 200)
  void lpc17IsWithinTheManualsBound(
      @ForAll @LongRange(min = 12_000_000, max = 120_000_000) long pclk,
      @ForAll @LongRange(min = 9600, max = 230_400) long baud) {
    FractionalSetting setting = Lpc17Uart.setting(pclk, baud);
    // UM10360 p.314: its own method yields less than 1.1 %.
    assertThat(Math.abs(setting.errorPercent())).isLessThan(1.1);
    assertThat(Lpc17Uart.legal(setting.divisor(), setting.divAdd(), setting.mul())).isTrue();
  }

  @Property
  void scaleNeverExceedsTheWantedCurrent(
      @ForAll @DoubleRange(min = 0.1, max = 3) double rms,
      @ForAll @DoubleRange(min = 0.05, max = 1) double sense) {
    int scale = DriverCurrent.scaleFor(rms, 0.325, sense, 0.02);
    double set = DriverCurrent.scaledRmsAmps(scale, 0.325, sense, 0.02);
    assertThat(set <= rms + 1e-6 || scale == 0).isTrue();
    if (scale < 31) {
      assertThat(DriverCurrent.scaledRmsAmps(scale + 1, 0.325, sense, 0.02)).isGreaterThan(rms);
    }
  }

  @Property
  void twoBeltsThereAndBack(
      @ForAll @DoubleRange(min = -500, max = 500) double x,
      @ForAll @DoubleRange(min = -500, max = 500) double y) {
    double a = TwoBeltDrive.motorA(x, y);
    double b = TwoBeltDrive.motorB(x, y);
    assertThat(TwoBeltDrive.x(a, b)).isCloseTo(x, within(1e-9));
    assertThat(TwoBeltDrive.y(a, b)).isCloseTo(y, within(1e-9));
  }

  @Property
  void aMoveIsNeverFasterThanItsSpeed(
      @ForAll @DoubleRange(min = 0.1, max = 500) double distance,
      @ForAll @DoubleRange(min = 1, max = 500) double speed,
      @ForAll @DoubleRange(min = 10, max = 20_000) double acceleration) {
    double seconds = Trapezoid.seconds(distance, speed, acceleration);
    assertThat(seconds).isGreaterThanOrEqualTo(distance / speed);
    assertThat(Trapezoid.peakSpeed(distance, speed, acceleration)).isLessThanOrEqualTo(speed);
  }

  @Property
  void thickerWireDropsLess(@ForAll @IntRange(min = -3, max = 55) int gauge) {
    assertThat(Wire.gaugeAreaMm2(gauge)).isGreaterThan(Wire.gaugeAreaMm2(gauge + 1));
    assertThat(Wire.dropVolts(1, 1, Wire.gaugeAreaMm2(gauge)))
        .isLessThan(Wire.dropVolts(1, 1, Wire.gaugeAreaMm2(gauge + 1)));
  }

  @Property
  void calibratingTwiceSettles(
      @ForAll @DoubleRange(min = 10, max = 5000) double current,
      @ForAll @DoubleRange(min = 50, max = 200) double measured) {
    Calibration first = Calibration.of(current, 100, measured, 0.02);
    // With the new value the same command travels what was wanted.
    Calibration second = Calibration.of(first.stepsPerMm(), 100, 100, 0.02);
    assertThat(second.stepsPerMm()).isCloseTo(first.stepsPerMm(), within(1e-9 * current));
  }

  @Property(tries = 300)
  void theUltimatePointSwingsForEver(
      @ForAll @DoubleRange(min = 0.1, max = 10) double gain,
      @ForAll @DoubleRange(min = 1, max = 500) double tau,
      @ForAll @DoubleRange(min = 0.5, max = 100) double dead) {
    UltimatePoint point = new Fopdt(gain, tau, dead).ultimate();
    double omega = 2 * Math.PI / point.puSeconds();
    assertThat(omega * dead + Math.atan(omega * tau)).isCloseTo(Math.PI, within(1e-9));
    assertThat(point.ku() * gain / Math.hypot(1, omega * tau)).isCloseTo(1, within(1e-9));
  }
}
