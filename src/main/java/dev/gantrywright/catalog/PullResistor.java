package dev.gantrywright.catalog;

import java.util.List;

/**
 * The pull resistor inside an input pin, in ohm.
 *
 * @param leastOhms the strongest pull that the maker allows for
 * @param typicalOhms the usual value
 * @param mostOhms the weakest pull that the maker allows for
 */
public record PullResistor(double leastOhms, double typicalOhms, double mostOhms) {

  static PullResistor of(Row row, String key) {
    List<Double> values = row.numbers(key);
    return new PullResistor(values.get(0), values.get(1), values.get(2));
  }
}
