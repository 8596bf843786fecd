package dev.gantrywright.physics;

/**
 * Heat of a stepper driver whose two full bridges carry the motor's current. Source: Joule's law;
 * in each bridge two transistors are in the way of the current at any moment.
 */
public final class BridgeHeat {
  /**
   * How far the on resistance of a silicon MOSFET rises from 25 °C to a hot junction; about 1.4 at
   * 125 °C (common practice, no published source).
   */
  public static final double HOT = 1.4;

  private BridgeHeat() {}

  /**
   * Power that the transistors turn into heat, W; switching losses are left out.
   *
   * @param rmsAmps current of each phase, A RMS
   * @param onOhms on resistance of each transistor at 25 °C, Ω
   */
  public static double watts(double rmsAmps, double onOhms) {
    int bridges = 2;
    int transistors = 2;
    return bridges * transistors * onOhms * HOT * rmsAmps * rmsAmps;
  }

  /**
   * The current that brings the junction to a temperature, A RMS.
   *
   * @param kelvin what the junction may be above the air, K
   * @param kelvinPerWatt thermal resistance from junction to air, K/W
   */
  public static double ampsFor(double kelvin, double kelvinPerWatt, double onOhms) {
    return Math.sqrt(kelvin / kelvinPerWatt / watts(1, onOhms));
  }
}
