package dev.gantrywright.names;

/**
 * Which axis, axis end and heater a candidate speaks of.
 *
 * @param axes bits of {@link Axes}; 0 where none is named
 * @param axisStrength 0 to 1
 * @param end 0 none, 1 lower, 2 upper
 * @param endStrength 0 to 1
 * @param heater 0 none, else an index into {@link #HEATERS} plus one
 * @param heaterStrength 0 to 1
 */
record Dims(
    int axes, double axisStrength, int end, double endStrength, int heater, double heaterStrength) {
  static final java.util.List<String> HEATERS = java.util.List.of("hotend", "bed", "chamber");
  static final Dims NONE = new Dims(0, 0, 0, 0, 0, 0);
  static final int LOWER = 1;
  static final int UPPER = 2;

  /** This, with what it leaves open taken from another. */
  Dims or(Dims other) {
    boolean ownAxes = axes != 0;
    boolean ownEnd = end != 0;
    boolean ownHeater = heater != 0;
    return new Dims(
        ownAxes ? axes : other.axes,
        ownAxes ? axisStrength : other.axisStrength,
        ownEnd ? end : other.end,
        ownEnd ? endStrength : other.endStrength,
        ownHeater ? heater : other.heater,
        ownHeater ? heaterStrength : other.heaterStrength);
  }

  Dims axis(int bits, double strength) {
    return new Dims(bits, strength, end, endStrength, heater, heaterStrength);
  }

  Dims end(int which, double strength) {
    return new Dims(axes, axisStrength, which, strength, heater, heaterStrength);
  }

  Dims heater(int which, double strength) {
    return new Dims(axes, axisStrength, end, endStrength, which, strength);
  }
}
