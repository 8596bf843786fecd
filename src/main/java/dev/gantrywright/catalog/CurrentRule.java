package dev.gantrywright.catalog;

import java.util.OptionalDouble;

/**
 * How the coil current of a driver IC follows from its settings.
 *
 * @param kind {@link Kind#VREF}: peak = VREF / (gain x sense resistor); {@link Kind#SCALE}: RMS
 *     from a current scale 0 to 31; {@link Kind#GLOBAL_SCALE}: the same times a scaler of 256ths
 * @param gain divisor of VREF, for kind VREF
 * @param fullScaleVolts voltage across the sense resistor at full scale, for the scale kinds
 * @param sensitiveFullScaleVolts the same in the high-sensitivity range, where there is one
 * @param internalOhms what the IC itself adds to the sense resistor
 * @param vrefLeastVolts least reference voltage
 * @param vrefMostVolts reference voltage at the top of the range, where the IC takes one
 * @param setsRms true where the setting is about the RMS current, false for the peak
 */
public record CurrentRule(
    Kind kind,
    double gain,
    double fullScaleVolts,
    OptionalDouble sensitiveFullScaleVolts,
    double internalOhms,
    double vrefLeastVolts,
    OptionalDouble vrefMostVolts,
    boolean setsRms) {

  /** The families of formulas. */
  public enum Kind {
    VREF,
    SCALE,
    GLOBAL_SCALE
  }

  static CurrentRule of(Row row) {
    Kind kind =
        switch (row.text("kind")) {
          case "vref" -> Kind.VREF;
          case "scale" -> Kind.SCALE;
          case "globalScale" -> Kind.GLOBAL_SCALE;
          default -> throw new IllegalStateException(row.place() + ": unknown kind");
        };
    return new CurrentRule(
        kind,
        row.number("gain", 0),
        row.number("fullScaleVolts", 0),
        optional(row, "sensitiveFullScaleVolts"),
        row.number("internalOhms", 0),
        row.number("vrefLeastVolts", 0),
        optional(row, "vrefMostVolts"),
        row.text("sets").equals("rms"));
  }

  static OptionalDouble optional(Row row, String key) {
    return row.has(key) ? OptionalDouble.of(row.number(key)) : OptionalDouble.empty();
  }
}
