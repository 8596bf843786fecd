package dev.gantrywright.names;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The units in which firmware folders give what a profile gives in its own. */
public final class Units {
  /** One unit: how many of it make one of the field's own. */
  private record Scale(String own, String unit, double factor) {
    Scale {
      own = plain(own);
      unit = plain(unit);
    }
  }

  /** Decimal prefixes and the minute: definitions of the SI brochure. */
  private static final List<Scale> SCALES =
      List.of(
          new Scale("A", "mA", 1e3),
          new Scale("V", "mV", 1e3),
          new Scale("W", "kW", 1e-3),
          new Scale("mm", "um", 1e3),
          new Scale("mm", "cm", 0.1),
          new Scale("mm", "m", 1e-3),
          new Scale("mm/s", "mm/min", 60),
          new Scale("mm/s", "m/min", 0.06),
          new Scale("mm/s", "m/s", 1e-3),
          new Scale("mm/s²", "m/s²", 1e-3),
          new Scale("Ω", "mΩ", 1e3),
          new Scale("Ω", "kΩ", 1e-3),
          new Scale("°C", "d°C", 10),
          new Scale("bit/s", "kbit/s", 1e-3),
          new Scale("steps/mm", "steps/m", 1e3),
          new Scale("steps/mm", "steps/cm", 10));

  private Units() {}

  /** How many of {@code unit} make one of {@code own}; empty where they do not measure the same. */
  public static OptionalDouble factor(String own, String unit) {
    if (unit == null || unit.isEmpty() || same(own, unit)) {
      return OptionalDouble.of(1);
    }
    String plainOwn = plain(own);
    String plainUnit = plain(unit);
    for (Scale scale : SCALES) {
      if (scale.own().equals(plainOwn) && scale.unit().equals(plainUnit)) {
        return OptionalDouble.of(scale.factor());
      }
    }
    return OptionalDouble.empty();
  }

  /** Two spellings of one unit. */
  static boolean same(String a, String b) {
    return plain(a).equals(plain(b));
  }

  private static String plain(String unit) {
    if (unit == null) {
      return "";
    }
    String text =
        unit.strip().replace("^2", "²").replace("s2", "s²").replace("μ", "u").replace("µ", "u");
    String lower = text.toLowerCase(Locale.ROOT).replace("ohms", "ω").replace("ohm", "ω");
    // the prefixes m and M differ by nine powers of ten, but nobody gives MA or MV here
    return lower.replace("sec", "s").replace("minute", "min").replace("mmin", "m/min");
  }
}
