package dev.gantrywright.reference;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.CurrentRule;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.physics.DriverCurrent;
import dev.gantrywright.physics.StepRate;
import dev.gantrywright.physics.StepsPerMm;
import java.util.stream.Collectors;

/** Group 5: stepper driver ICs. */
final class DriverRows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  DriverRows() {
    super("G05_drivers");
    Class<?> by = DriverCurrent.class;
    formula("i_a4988", by, row -> peak("A4988", row));
    formula("i_drv8825", by, row -> peak("DRV8825", row));
    formula("v_a4988", by, row -> vref("A4988", row));
    formula("v_drv8825", by, row -> vref("DRV8825", row));
    formula(
        "drv_vtrip",
        by,
        row -> DriverCurrent.tripVolts(row.number("vref"), rule("DRV8825").gain()));
    formula(
        "tmc_rms",
        by,
        row ->
            DriverCurrent.scaledRmsAmps(
                row.whole("cs"), row.number("vfs"), row.number("rs"), row.number("rint")));
    formula(
        "tmc_rms_vref",
        by,
        row ->
            DriverCurrent.scaledRmsAmps(
                row.whole("cs"),
                row.number("vfs"),
                row.number("rs"),
                row.number("rint"),
                row.number("vref"),
                rule("TMC2209").vrefMostVolts().orElseThrow()));
    formula(
        "tmc_cs",
        by,
        row ->
            DriverCurrent.scaleFor(
                row.number("irms"), row.number("vfs"), row.number("rs"), row.number("rint")));
    formula(
        "tmc5160_rms",
        by,
        row ->
            DriverCurrent.globalRmsAmps(
                row.whole("gs"), row.whole("cs"), row.number("vfs"), row.number("rs")));
    formula("rms2peak", by, row -> DriverCurrent.peakOfRms(row.number("irms")));
    formula("peak2rms", by, row -> DriverCurrent.rmsOfPeak(row.number("ipk")));
    formula(
        "stealth_min",
        by,
        row ->
            DriverCurrent.voltageModeLeastAmps(
                row.number("tblank_clk"),
                row.number("fpwm_num") / row.number("fpwm_den"),
                row.number("vm"),
                row.number("rcoil")));
    formula("vactual_lsb", by, row -> DriverCurrent.velocityUnitHertz(row.number("fclk")));
    formula(
        "max_step_khz",
        StepRate.class,
        row -> StepRate.ceilingHertz(row.number("th_us") * 1e-6, row.number("tl_us") * 1e-6) / 1e3);
    formula(
        "rpm_steps",
        StepRate.class,
        row ->
            StepRate.ofRpm(
                row.number("rpm"), StepsPerMm.fullSteps(row.number("angle")), row.number("micro")));
  }

  private static CurrentRule rule(String ic) {
    return CATALOG.driver(ic).orElseThrow().current();
  }

  private static double peak(String ic, HandbookRow row) {
    return DriverCurrent.vrefPeakAmps(row.number("vref"), rule(ic).gain(), row.number("rs"));
  }

  private static double vref(String ic, HandbookRow row) {
    return DriverCurrent.vrefVolts(row.number("i"), rule(ic).gain(), row.number("rs"));
  }

  @Override
  protected Use fact(HandbookRow row) {
    String name = row.quantity().substring(0, row.quantity().indexOf(' '));
    DriverIc ic = CATALOG.driver(name.equals("TMC22xx") ? "TMC2209" : name).orElse(null);
    if (ic == null) {
      return Use.none("the IC is not in the catalogue");
    }
    for (String pins : new String[] {"mode210", "ms123", "ms12"}) {
      if (row.has(pins)) {
        String levels = row.text(pins).replace('0', 'L').replace('1', 'H').replace(" ", "");
        return Use.number(ic.pinMicrosteps().get(levels), Catalog.class);
      }
    }
    return switch (row.quantity().substring(name.length() + 1)) {
      case "finest microstep" -> Use.number(ic.microsteps().last(), Catalog.class);
      case "supply minimum" -> Use.number(ic.supplyLeastVolts(), Catalog.class);
      case "supply maximum", "load supply max" -> Use.number(ic.supplyMostVolts(), Catalog.class);
      case "VREF range top", "VREF recommended maximum" ->
          Use.number(ic.current().vrefMostVolts().orElseThrow(), Catalog.class);
      case "output rating", "peak rating" -> Use.number(ic.peakAmps().orElseThrow(), Catalog.class);
      case "RMS rating" -> Use.number(ic.rmsAmps().orElseThrow(), Catalog.class);
      case "internal interpolation" -> Use.number(ic.interpolation(), Catalog.class);
      case "pin-selectable microsteps" ->
          Use.text(
              ic.pinMicrosteps().values().stream()
                  .sorted()
                  .map(String::valueOf)
                  .collect(Collectors.joining("/")),
              Catalog.class);
      case "UART rate range" ->
          Use.text(ic.uartBaud().get(0) + ".." + ic.uartBaud().get(1), Catalog.class);
      case "STEP high minimum", "STEP high minimum (listed in the Typ column)" ->
          Use.number(ic.stepHighSeconds() * 1e6, Catalog.class);
      case "STEP low minimum", "STEP low minimum (listed in the Typ column)" ->
          Use.number(ic.stepLowSeconds() * 1e6, Catalog.class);
      case "STEP high/low minimum at 12 MHz clock" ->
          Use.number(ic.stepHighSeconds() * 1e9, Catalog.class);
      case "maximum step frequency" -> Use.number(ic.maxStepHertz() / 1e3, Catalog.class);
      default -> Use.none("the catalogue keeps no such fact");
    };
  }
}
