package dev.gantrywright.catalog;

import java.util.Collections;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * A thermistor table as its maker prints it.
 *
 * @param curve the maker's number of the table
 * @param ratioByCelsius resistance over that at 25 °C, by temperature in °C
 * @param source where this stands
 */
public record NtcCurve(String curve, NavigableMap<Double, Double> ratioByCelsius, String source) {
  static NtcCurve of(Row row) {
    NavigableMap<Double, Double> points = new TreeMap<>();
    row.table("points").forEach((t, ratio) -> points.put(Double.valueOf(t), ratio));
    return new NtcCurve(
        row.text("curve"), Collections.unmodifiableNavigableMap(points), row.text("source"));
  }
}
