package dev.gantrywright.reference;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.physics.AdcDivider;
import dev.gantrywright.physics.MaterialCurve;
import dev.gantrywright.physics.Ntc;
import dev.gantrywright.physics.PlatinumRtd;
import dev.gantrywright.physics.RatioConverter;
import dev.gantrywright.physics.RatioTable;
import dev.gantrywright.physics.SteinhartHart;
import dev.gantrywright.physics.ThermocoupleAmplifier;

/** Group 7: temperature sensors. */
final class TemperatureRows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  TemperatureRows() {
    super("G07_temperature");
    formula("cvd", PlatinumRtd.class, row -> PlatinumRtd.ohms(row.number("r0"), row.number("t")));
    formula(
        "cvd_inv",
        PlatinumRtd.class,
        row -> PlatinumRtd.celsius(row.number("r0"), row.number("r")));
    formula(
        "tol_rtd",
        PlatinumRtd.class,
        row -> PlatinumRtd.toleranceCelsius(row.number("c0"), row.number("c1"), row.number("t")));
    formula(
        "max31865_code_cvd",
        RatioConverter.class,
        row ->
            RatioConverter.code(
                PlatinumRtd.ohms(row.number("r0"), row.number("t")), row.number("rref")));
    formula(
        "max31865_lin",
        RatioConverter.class,
        row -> RatioConverter.quickCelsius(row.whole("code")));
    formula(
        "max31865_r",
        RatioConverter.class,
        row -> RatioConverter.ohms(row.whole("code"), row.number("rref")));
    formula(
        "beta_from",
        Ntc.class,
        row -> Ntc.beta(row.number("r1"), row.number("t1"), row.number("r2"), row.number("t2")));
    formula(
        "beta_ratio",
        Ntc.class,
        row -> Ntc.ratio(row.number("beta"), row.number("t"), row.number("t0")));
    formula(
        "beta_temp",
        Ntc.class,
        row -> Ntc.celsiusOfRatio(row.number("beta"), row.number("ratio"), row.number("t0")));
    formula(
        "alpha_interp",
        Ntc.class,
        row ->
            Ntc.nearPoint(
                row.number("rx"), row.number("alpha"), row.number("tx"), row.number("t")));
    formula("amph_ratio", MaterialCurve.class, row -> MaterialCurve.TYPE_1.ratio(row.number("t")));
    formula(
        "amph_temp", MaterialCurve.class, row -> MaterialCurve.TYPE_1.celsius(row.number("ratio")));
    formula("sh_temp", SteinhartHart.class, row -> curve(row).celsius(row.number("r")));
    formula("r_of_ratio", RatioTable.class, TemperatureRows::tableOhms);
    formula(
        "adc_pullup",
        AdcDivider.class,
        row -> AdcDivider.counts(row.number("r"), row.number("rpu"), row.whole("bits")));
    formula(
        "adc_pullup_inv",
        AdcDivider.class,
        row -> AdcDivider.sensorOhms(row.number("code"), row.number("rpu"), row.whole("bits")));
    formula(
        "adc_code",
        AdcDivider.class,
        row -> AdcDivider.countsOfVolts(row.number("v"), row.number("vref"), row.whole("bits")));
    formula(
        "ad849x",
        ThermocoupleAmplifier.class,
        row -> ThermocoupleAmplifier.volts(row.number("t"), row.number("vref")));
    formula(
        "ad849x_inv",
        ThermocoupleAmplifier.class,
        row -> ThermocoupleAmplifier.celsius(row.number("v"), row.number("vref")));
  }

  private static SteinhartHart curve(HandbookRow row) {
    return SteinhartHart.through(
        row.number("r1"),
        row.number("t1"),
        row.number("r2"),
        row.number("t2"),
        row.number("r3"),
        row.number("t3"));
  }

  /** "100 kohm part, 8403 at 200 C": the catalogue's table times R25. */
  private static double tableOhms(HandbookRow row) {
    String[] words = row.quantity().replaceAll(".*, (\\d+) at (\\d+) C", "$1 $2").split(" ");
    return tableRatio(words[0], Double.parseDouble(words[1])) * row.number("r25");
  }

  private static double tableRatio(String curve, double celsius) {
    return new RatioTable(CATALOG.ntcCurve(curve).orElseThrow().ratioByCelsius()).ratio(celsius);
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.has("curve")) {
      return Use.number(tableRatio(row.text("curve"), row.number("t")), RatioTable.class);
    }
    return switch (row.quantity()) {
      case "IEC 60751 coefficient A" -> Use.number(PlatinumRtd.A, PlatinumRtd.class);
      case "IEC 60751 coefficient B" -> Use.number(PlatinumRtd.B, PlatinumRtd.class);
      case "IEC 60751 coefficient C (t<0 only)" -> Use.number(PlatinumRtd.C, PlatinumRtd.class);
      case "Vishay NTCLE100E3104 B25/85" -> beta("ntcle100e3104");
      case "Semitec 104GT-2 B25/85" -> beta("ntc-100k-4267");
      case "B57540G upper category temperature" -> most("b57540g-100k");
      case "B57560G upper category temperature" -> most("b57560g-100k");
      case "B57861S upper category temperature" -> most("b57861s-10k");
      default -> Use.none("the program has no thermocouple table; the rest is words");
    };
  }

  private static Use beta(String name) {
    return Use.number(sensor(name).betaKelvin().orElseThrow(), Catalog.class);
  }

  private static Use most(String name) {
    return Use.number(sensor(name).mostCelsius(), Catalog.class);
  }

  private static Sensor sensor(String name) {
    return CATALOG.sensor(name).orElseThrow();
  }
}
