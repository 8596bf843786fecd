package dev.gantrywright.catalog;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The facts about parts that the program ships with. Immutable; every row says where it stands.
 *
 * @param mcus microcontrollers
 * @param drivers stepper driver ICs
 * @param belts synchronous belts
 * @param screws screw threads
 * @param frames motor mounting frames
 * @param ntcCurves thermistor tables
 * @param platinumClasses tolerance classes of platinum sensors
 * @param ampacities what conductors carry
 */
public record Catalog(
    List<Mcu> mcus,
    List<DriverIc> drivers,
    List<Belt> belts,
    List<Screw> screws,
    List<MotorFrame> frames,
    List<NtcCurve> ntcCurves,
    List<PlatinumClass> platinumClasses,
    List<Ampacity> ampacities) {
  private static final Pattern PACKAGE = Pattern.compile("[-_ A-Z]*");

  /**
   * Reads the data files that lie beside this class.
   *
   * @throws IllegalStateException if a row lacks something, naming file, row and key
   */
  public static Catalog shipped() {
    Map<String, McuFamily> families = new LinkedHashMap<>();
    for (Row row : Row.all("mcu-families.json", "families")) {
      McuFamily family = McuFamily.of(row);
      families.put(family.id(), family);
    }
    return new Catalog(
        Stream.of("mcus-avr.json", "mcus-lpc17.json", "mcus-stm32.json", "mcus-other.json")
            .flatMap(file -> Row.all(file, "mcus").stream())
            .map(row -> Mcu.of(row, familyOf(row, families)))
            .toList(),
        Row.all("driver-ics.json", "drivers").stream().map(DriverIc::of).toList(),
        Row.all("belts.json", "belts").stream().map(Belt::of).toList(),
        Row.all("screws.json", "screws").stream().map(Screw::of).toList(),
        Row.all("motor-frames.json", "frames").stream().map(MotorFrame::of).toList(),
        Row.all("ntc-curves.json", "curves").stream().map(NtcCurve::of).toList(),
        Row.all("platinum-classes.json", "classes").stream().map(PlatinumClass::of).toList(),
        Row.all("conductors.json", "conductors").stream().map(Ampacity::of).toList());
  }

  private static McuFamily familyOf(Row row, Map<String, McuFamily> families) {
    McuFamily family = families.get(row.text("family"));
    if (family == null) {
      throw new IllegalStateException(row.place() + ": no family " + row.text("family"));
    }
    return family;
  }

  /** The part by its number, in any case, with or without package and temperature letters. */
  public Optional<Mcu> mcu(String part) {
    return PartNumbers.find(mcus, part);
  }

  /** The driver IC by its name, in any case, with or without package letters (TMC2209-LA). */
  public Optional<DriverIc> driver(String ic) {
    String wanted = ic.strip().toUpperCase(Locale.ROOT);
    return drivers.stream()
        .filter(row -> named(wanted, row.ic().toUpperCase(Locale.ROOT)))
        .findFirst();
  }

  private static boolean named(String wanted, String ic) {
    return wanted.startsWith(ic) && PACKAGE.matcher(wanted.substring(ic.length())).matches();
  }

  /** The belt by its designation, in any case. */
  public Optional<Belt> belt(String designation) {
    return belts.stream()
        .filter(row -> row.designation().equalsIgnoreCase(designation.strip()))
        .findFirst();
  }

  /** The screw thread by its designation, in any case; both x and × are taken. */
  public Optional<Screw> screw(String designation) {
    String wanted = designation.strip().replace('×', 'x').replace(" ", "");
    return screws.stream()
        .filter(row -> row.designation().replace(" ", "").equalsIgnoreCase(wanted))
        .findFirst();
  }

  /** The thermistor table by its number. */
  public Optional<NtcCurve> ntcCurve(String curve) {
    return ntcCurves.stream().filter(row -> row.curve().equals(curve.strip())).findFirst();
  }

  /** Every temperature sensor that profiles may name. */
  public List<Sensor> sensors() {
    return Sensors.all();
  }

  /** The temperature sensor by its id, in any case. */
  public Optional<Sensor> sensor(String id) {
    return Sensors.byId(id);
  }

  /** What a conductor of this cross-section carries by this method at this ambient temperature. */
  public Optional<Ampacity> ampacity(double areaMm2, String method, double ambientCelsius) {
    return ampacities.stream()
        .filter(row -> row.areaMm2() == areaMm2 && row.ambientCelsius() == ambientCelsius)
        .filter(row -> row.method().equalsIgnoreCase(method.strip()))
        .findFirst();
  }
}
