package dev.gantrywright.catalog;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * One stepper driver IC.
 *
 * @param ic the maker's name
 * @param maker who makes it
 * @param current how its coil current is set
 * @param peakAmps highest peak current, absent where outside transistors decide
 * @param rmsAmps highest RMS current, absent where outside transistors decide
 * @param supplyLeastVolts least motor supply
 * @param supplyMostVolts highest motor supply
 * @param logic pins, uart or spi
 * @param pinNames the mode pins in the order of the table's letters
 * @param pinMicrosteps microsteps by pin levels (L, H, O for open)
 * @param interfaceMicrosteps microsteps that the interface can set
 * @param interpolation microsteps that the IC makes by itself between steps, 0 for none
 * @param stepHighSeconds least time STEP stays high
 * @param stepLowSeconds least time STEP stays low
 * @param statedStepHertz highest step rate that the sheet states, where it states one
 * @param uartAddresses how many of them one UART line can tell apart, 0 without UART
 * @param uartBaud least and highest UART rate, empty without UART
 * @param heat what decides how warm it runs, where it is known
 * @param caution what to mind, or empty
 * @param source where these facts stand
 */
public record DriverIc(
    String ic,
    String maker,
    CurrentRule current,
    OptionalDouble peakAmps,
    OptionalDouble rmsAmps,
    double supplyLeastVolts,
    double supplyMostVolts,
    String logic,
    String pinNames,
    Map<String, Integer> pinMicrosteps,
    List<Integer> interfaceMicrosteps,
    int interpolation,
    double stepHighSeconds,
    double stepLowSeconds,
    OptionalDouble statedStepHertz,
    int uartAddresses,
    List<Long> uartBaud,
    Optional<DriverHeat> heat,
    String caution,
    String source) {

  static DriverIc of(Row row) {
    List<Double> supply = row.numbers("supplyVolts");
    boolean pins = row.has("pins");
    return new DriverIc(
        row.text("ic"),
        row.text("maker"),
        CurrentRule.of(row.child("current")),
        CurrentRule.optional(row, "peakAmps"),
        CurrentRule.optional(row, "rmsAmps"),
        supply.get(0),
        supply.get(1),
        row.text("logic"),
        pins ? row.child("pins").text("names") : "",
        pins ? pinTable(row.child("pins")) : Map.of(),
        row.wholes("interfaceMicrosteps").stream().map(Long::intValue).toList(),
        (int) row.whole("interpolation", 0),
        row.number("stepHighSeconds"),
        row.number("stepLowSeconds"),
        CurrentRule.optional(row, "maxStepHertz"),
        (int) row.whole("uartAddresses", 0),
        row.wholes("uartBaud"),
        row.has("heat") ? Optional.of(DriverHeat.of(row.child("heat"))) : Optional.empty(),
        row.text("caution", ""),
        row.text("source"));
  }

  private static Map<String, Integer> pinTable(Row pins) {
    Map<String, Integer> table = new LinkedHashMap<>();
    pins.table("table").forEach((levels, steps) -> table.put(levels, steps.intValue()));
    return java.util.Collections.unmodifiableMap(table);
  }

  /** Every microstep setting that the IC has, by pins or by interface. */
  public SortedSet<Integer> microsteps() {
    SortedSet<Integer> all = new TreeSet<>(interfaceMicrosteps);
    all.addAll(pinMicrosteps.values());
    return all;
  }

  /** The highest step rate: the stated one, or what the pulse times leave. */
  public double maxStepHertz() {
    return statedStepHertz.orElse(1.0 / (stepHighSeconds + stepLowSeconds));
  }
}
