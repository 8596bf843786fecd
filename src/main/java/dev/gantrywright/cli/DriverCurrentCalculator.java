package dev.gantrywright.cli;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.CurrentRule;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.physics.DriverCurrent;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute driver-current. */
@Command(
    name = "driver-current",
    description = "Coil current that a stepper driver is set to: peak and RMS.")
final class DriverCurrentCalculator extends Calculator {
  @Option(
      names = "--driver",
      paramLabel = "IC",
      required = true,
      description = "Name of the driver IC, such as A4988, DRV8825 or TMC2209.")
  String driver;

  @Option(
      names = "--sense",
      paramLabel = "OHM",
      required = true,
      description = "Sense resistor on the driver's board.")
  double sense;

  @Option(names = "--vref", paramLabel = "V", description = "Reference voltage.")
  Double vref;

  @Option(
      names = "--scale",
      paramLabel = "0..31",
      description = "Current scale of drivers that are set by their interface.")
  Integer scale;

  @Option(
      names = "--global-scaler",
      paramLabel = "1..256",
      description = "Global scaler of drivers that have one (default 256).")
  Integer globalScaler;

  @Option(
      names = "--high-sensitivity",
      description = "Drivers with a second, lower full-scale voltage: use that one.")
  boolean highSensitivity;

  @Override
  Answer answer() {
    Catalog catalog = Catalog.shipped();
    DriverIc ic = catalog.driver(driver).orElseThrow(() -> problem(unknown(catalog)));
    CurrentRule rule = ic.current();
    boolean scaled = rule.kind() != CurrentRule.Kind.VREF;
    refuse(!scaled && scale != null, "--scale", ic.ic() + " is set by --vref alone");
    refuse(
        globalScaler != null && rule.kind() != CurrentRule.Kind.GLOBAL_SCALE,
        "--global-scaler",
        ic.ic() + " has none");
    return switch (rule.kind()) {
      case VREF -> byVref(ic);
      case SCALE -> byScale(ic);
      case GLOBAL_SCALE -> byGlobalScale(ic);
    };
  }

  private Answer byVref(DriverIc ic) {
    CurrentRule rule = ic.current();
    refuse(highSensitivity, "--high-sensitivity", ic.ic() + " has one range");
    double volts = needed(vref, "--vref", "the reference voltage of " + ic.ic());
    double peak = DriverCurrent.vrefPeakAmps(volts, rule.gain(), sense);
    Answer answer =
        answer(ic, peak, DriverCurrent.rmsOfPeak(peak))
            .line("formula", "peak = VREF / (" + Answer.sixDigits(rule.gain()) + " x sense)");
    if (rule.vrefMostVolts().isPresent() && volts > rule.vrefMostVolts().getAsDouble()) {
      answer.line(
          "mind",
          "VREF above the range of " + rule.vrefMostVolts().getAsDouble() + " V of " + ic.ic());
    }
    return sourced(answer, ic);
  }

  private Answer byScale(DriverIc ic) {
    CurrentRule rule = ic.current();
    double fullScale = fullScale(ic);
    if (vref == null && scale == null) {
      throw problem("give --scale 0..31, or --vref, or both");
    }
    int cs = scale == null ? 31 : scale;
    double rms;
    if (vref == null) {
      rms = DriverCurrent.scaledRmsAmps(cs, fullScale, sense, rule.internalOhms());
    } else {
      refuse(rule.vrefMostVolts().isEmpty(), "--vref", ic.ic() + " is set by --scale alone");
      rms =
          DriverCurrent.scaledRmsAmps(
              cs, fullScale, sense, rule.internalOhms(), vref, rule.vrefMostVolts().getAsDouble());
    }
    String inner = rule.internalOhms() > 0 ? "(sense + " + rule.internalOhms() + " ohm)" : "sense";
    String share = vref == null ? "" : " x VREF / " + rule.vrefMostVolts().getAsDouble() + " V";
    return sourced(
        answer(ic, DriverCurrent.peakOfRms(rms), rms)
            .line(
                "formula",
                "RMS = (scale + 1)/32 x " + fullScale + " V / " + inner + " / sqrt 2" + share),
        ic);
  }

  private Answer byGlobalScale(DriverIc ic) {
    refuse(vref != null, "--vref", ic.ic() + " is set by --scale and --global-scaler");
    refuse(highSensitivity, "--high-sensitivity", ic.ic() + " has one range");
    int cs = needed(scale, "--scale", "the current scale 0..31 of " + ic.ic());
    int global = globalScaler == null ? 256 : globalScaler;
    double fullScale = ic.current().fullScaleVolts();
    double rms = DriverCurrent.globalRmsAmps(global, cs, fullScale, sense);
    return sourced(
        answer(ic, DriverCurrent.peakOfRms(rms), rms)
            .line(
                "formula",
                "RMS = global/256 x (scale + 1)/32 x " + fullScale + " V / sense / sqrt 2"),
        ic);
  }

  private double fullScale(DriverIc ic) {
    if (!highSensitivity) {
      return ic.current().fullScaleVolts();
    }
    return ic.current()
        .sensitiveFullScaleVolts()
        .orElseThrow(
            () -> problem("--high-sensitivity does not fit: " + ic.ic() + " has one range"));
  }

  private static Answer answer(DriverIc ic, double peak, double rms) {
    Answer answer =
        new Answer()
            .figure("peakAmps", "peak", peak, "A")
            .figure("rmsAmps", "RMS", rms, "A")
            .line("sets", ic.current().setsRms() ? "the RMS current" : "the peak current");
    if (ic.rmsAmps().isPresent() && rms > ic.rmsAmps().getAsDouble()) {
      answer.line("mind", "above the rating of " + ic.rmsAmps().getAsDouble() + " A RMS");
    }
    return answer;
  }

  private static Answer sourced(Answer answer, DriverIc ic) {
    return answer.line("source", ic.source());
  }

  private String unknown(Catalog catalog) {
    return "--driver "
        + driver
        + " is not in the catalogue; known are "
        + catalog.drivers().stream().map(DriverIc::ic).collect(Collectors.joining(", "));
  }
}
