package dev.gantrywright.physics;

/**
 * A 15-bit converter that measures a platinum sensor against a reference resistor.
 *
 * <p>Source: MAX31865 data sheet: code = 32768 R/Rref, quick temperature code/32 - 256 (good near 0
 * °C and with a reference of four times R0). The register holds the code shifted left by one.
 */
public final class RatioConverter {
  private static final double FULL_SCALE = 32768;

  private RatioConverter() {}

  /** The code of a resistance, rounded down, at most 32767. */
  public static int code(double ohms, double referenceOhms) {
    OutOfDomain.notNegative("the resistance in ohm", ohms);
    OutOfDomain.positive("the reference resistor in ohm", referenceOhms);
    return (int) Math.min(FULL_SCALE - 1, Math.floor(FULL_SCALE * ohms / referenceOhms));
  }

  /** The resistance in Ω of a code. */
  public static double ohms(int code, double referenceOhms) {
    OutOfDomain.between("the code", code, 0, FULL_SCALE - 1);
    return code * OutOfDomain.positive("the reference resistor in ohm", referenceOhms) / FULL_SCALE;
  }

  /** The quick temperature in °C of a code. */
  public static double quickCelsius(int code) {
    return OutOfDomain.between("the code", code, 0, FULL_SCALE - 1) / 32 - 256;
  }
}
