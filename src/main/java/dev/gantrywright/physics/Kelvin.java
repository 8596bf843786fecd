package dev.gantrywright.physics;

/** Temperatures from absolute zero. */
final class Kelvin {
  private static final double ZERO_CELSIUS = 273.15;

  private Kelvin() {}

  static double of(double celsius) {
    OutOfDomain.finite("the temperature in °C", celsius);
    if (celsius <= -ZERO_CELSIUS) {
      throw new OutOfDomain("the temperature must lie above -273.15 °C, got " + celsius);
    }
    return celsius + ZERO_CELSIUS;
  }

  /** Celsius of a reciprocal temperature in 1/K. */
  static double celsiusOfReciprocal(double perKelvin) {
    if (!(perKelvin > 0)) {
      throw new OutOfDomain("no temperature gives this resistance");
    }
    return 1 / perKelvin - ZERO_CELSIUS;
  }
}
