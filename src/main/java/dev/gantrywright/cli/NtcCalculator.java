package dev.gantrywright.cli;

import dev.gantrywright.physics.Ntc;
import dev.gantrywright.physics.SteinhartHart;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute ntc. */
@Command(
    name = "ntc",
    description = "Resistance and temperature of a thermistor, by B value or Steinhart-Hart.")
final class NtcCalculator extends Calculator {
  @Option(names = "--r25", paramLabel = "OHM", description = "Resistance at 25 °C.")
  Double r25;

  @Option(names = "--beta", paramLabel = "K", description = "B value.")
  Double beta;

  @Option(names = "--a", paramLabel = "A", description = "Steinhart-Hart coefficient of 1.")
  Double a;

  @Option(names = "--b", paramLabel = "B", description = "Steinhart-Hart coefficient of ln R.")
  Double b;

  @Option(names = "--c", paramLabel = "C", description = "Steinhart-Hart coefficient of (ln R)³.")
  Double c;

  @Option(names = "--celsius", paramLabel = "T", description = "Temperature to convert.")
  Double celsius;

  @Option(names = "--ohms", paramLabel = "R", description = "Resistance to convert.")
  Double ohms;

  @Override
  Answer answer() {
    if ((celsius == null) == (ohms == null)) {
      throw problem("give one of --celsius and --ohms");
    }
    boolean curve = a != null || b != null || c != null;
    boolean byBeta = r25 != null || beta != null;
    if (curve == byBeta) {
      throw problem("give --r25 with --beta, or --a, --b and --c");
    }
    return curve ? bySteinhartHart() : byBeta();
  }

  private Answer byBeta() {
    double atRoom = needed(r25, "--r25", "the resistance at 25 °C in ohm");
    double kelvin = needed(beta, "--beta", "the B value in K");
    double r = ohms != null ? ohms : Ntc.ohms(atRoom, kelvin, celsius);
    double t = celsius != null ? celsius : Ntc.celsius(atRoom, kelvin, ohms);
    return answer(r, t)
        .line("formula", "R = R25 exp(B (1/T - 1/298.15 K))")
        .line("source", "IEC 60539-1, definition of the B value");
  }

  private Answer bySteinhartHart() {
    SteinhartHart curve =
        new SteinhartHart(
            needed(a, "--a", "the first coefficient"),
            needed(b, "--b", "the second coefficient"),
            needed(c, "--c", "the third coefficient"));
    double r = ohms != null ? ohms : curve.ohms(celsius);
    double t = celsius != null ? celsius : curve.celsius(ohms);
    return answer(r, t)
        .line("formula", "1/T = a + b ln R + c (ln R)^3")
        .line("source", "Steinhart and Hart 1968, Deep-Sea Research 15");
  }

  private static Answer answer(double r, double t) {
    return new Answer()
        .figure("ohms", "resistance", r, "ohm")
        .figure("celsius", "temperature", t, "°C");
  }
}
