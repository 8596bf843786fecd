package dev.gantrywright.cli;

import dev.gantrywright.physics.PlatinumRtd;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute rtd. */
@Command(
    name = "rtd",
    description = "Resistance and temperature of a platinum sensor, -200 to 850 °C.")
final class RtdCalculator extends Calculator {
  @Option(
      names = "--r0",
      paramLabel = "OHM",
      defaultValue = "100",
      description = "Resistance at 0 °C (default ${DEFAULT-VALUE}, a Pt100).")
  double r0;

  @Option(names = "--celsius", paramLabel = "T", description = "Temperature to convert.")
  Double celsius;

  @Option(names = "--ohms", paramLabel = "R", description = "Resistance to convert.")
  Double ohms;

  @Override
  Answer answer() {
    if ((celsius == null) == (ohms == null)) {
      throw problem("give one of --celsius and --ohms");
    }
    double r = ohms != null ? ohms : PlatinumRtd.ohms(r0, celsius);
    double t = celsius != null ? celsius : PlatinumRtd.celsius(r0, ohms);
    return new Answer()
        .figure("ohms", "resistance", r, "ohm")
        .figure("celsius", "temperature", t, "°C")
        .line("formula", "R = R0 (1 + A t + B t^2 + C (t - 100) t^3), C below 0 °C only")
        .line("source", "IEC 60751");
  }
}
