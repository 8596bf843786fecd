package dev.gantrywright.physics;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * A thermistor by its maker's table. Between two points ln R is taken as linear in 1/T, which is a
 * B value of its own for every interval (the way makers print α per point).
 */
public final class RatioTable {
  private final NavigableMap<Double, Double> points;

  /**
   * @param ratioByCelsius resistance over that at 25 °C by temperature; two points at least,
   *     falling with temperature
   * @throws OutOfDomain if the ratios are not positive or do not fall
   */
  public RatioTable(Map<Double, Double> ratioByCelsius) {
    this.points = new TreeMap<>(ratioByCelsius);
    if (points.size() < 2) {
      throw new OutOfDomain("a table needs two points at least");
    }
    double last = Double.POSITIVE_INFINITY;
    for (Map.Entry<Double, Double> point : points.entrySet()) {
      Kelvin.of(point.getKey());
      if (OutOfDomain.positive("the resistance ratio", point.getValue()) >= last) {
        throw new OutOfDomain("the ratio must fall with temperature, not at " + point.getKey());
      }
      last = point.getValue();
    }
  }

  /**
   * Resistance at a temperature in °C over that at 25 °C.
   *
   * @throws OutOfDomain outside the table
   */
  public double ratio(double celsius) {
    OutOfDomain.between("the temperature in °C", celsius, points.firstKey(), points.lastKey());
    Map.Entry<Double, Double> low = points.floorEntry(celsius);
    Map.Entry<Double, Double> high = points.higherEntry(celsius);
    if (high == null) {
      return low.getValue();
    }
    return low.getValue() * Ntc.ratio(beta(low, high), celsius, low.getKey());
  }

  /**
   * Temperature in °C of a resistance over that at 25 °C.
   *
   * @throws OutOfDomain outside the table
   */
  public double celsius(double ratio) {
    double most = points.firstEntry().getValue();
    double least = points.lastEntry().getValue();
    OutOfDomain.between("the resistance ratio", ratio, least, most);
    Map.Entry<Double, Double> low = points.firstEntry();
    for (Map.Entry<Double, Double> high : points.tailMap(low.getKey(), false).entrySet()) {
      if (ratio >= high.getValue()) {
        return Ntc.celsiusOfRatio(beta(low, high), ratio / low.getValue(), low.getKey());
      }
      low = high;
    }
    return points.lastKey();
  }

  private static double beta(Map.Entry<Double, Double> low, Map.Entry<Double, Double> high) {
    return Ntc.beta(low.getValue(), low.getKey(), high.getValue(), high.getKey());
  }
}
