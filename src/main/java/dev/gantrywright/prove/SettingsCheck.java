package dev.gantrywright.prove;

import dev.gantrywright.link.Dialect;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Check.Family;
import dev.gantrywright.prove.Check.Verdict;
import dev.gantrywright.prove.StoredSettings.Value;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Compares the settings that the firmware has in force with the profile. */
public final class SettingsCheck {
  /** Units in which firmware may keep a value, as multiples of the profile's unit. */
  private static final Map<String, List<Double>> SCALES =
      Map.of(
          "stepsPerMm", List.of(1.0),
          // mm/s, mm/min
          "maxSpeed", List.of(1.0, 60.0),
          "acceleration", List.of(1.0),
          // A, mA
          "driver.current", List.of(1.0, 1000.0));

  private final PrinterProfile profile;
  private final Dialect dialect;

  public SettingsCheck(PrinterProfile profile, Dialect dialect) {
    this.profile = profile;
    this.dialect = dialect;
  }

  /** One check for each value that the profile gives. */
  public List<Check> judge(Map<String, Value> stored) {
    List<Check> checks = new ArrayList<>();
    expected().forEach((path, wanted) -> checks.add(one(path, wanted, stored.get(path))));
    return checks;
  }

  /**
   * The lines that would bring the machine to the profile, to be sent one by one on an armed line;
   * the last one stores them. Empty when nothing differs. A value whose unit the firmware's own
   * report does not show is left out: sent in the wrong unit it could burn a driver.
   */
  public List<String> linesToSend(Map<String, Value> stored) {
    List<String> lines = new ArrayList<>();
    expected()
        .forEach(
            (path, wanted) -> {
              Value value = stored.get(path);
              String command = dialect.settingCommands().get(field(path));
              if (value != null && command != null && scale(path, wanted, value) == 0) {
                double scale = firmwareScale(path, wanted, value.value(), stored);
                if (scale != 0) {
                  lines.add(command + " " + letter(path) + number(wanted * scale));
                }
              }
            });
    if (!lines.isEmpty() && !dialect.save().isBlank()) {
      lines.add(dialect.save());
    }
    return lines;
  }

  private Map<String, Double> expected() {
    Map<String, Double> values = new LinkedHashMap<>();
    profile
        .axes()
        .forEach(
            (name, axis) -> {
              put(values, name, "stepsPerMm", axis.stepsPerMm());
              put(values, name, "maxSpeed", axis.maxSpeed());
              put(values, name, "acceleration", axis.acceleration());
              put(values, name, "driver.current", axis.driver().current());
            });
    return values;
  }

  private static void put(Map<String, Double> values, String axis, String field, Double value) {
    if (value != null) {
      values.put("axes." + axis + "." + field, value);
    }
  }

  private Check one(String path, double wanted, Value stored) {
    if (stored == null) {
      return new Check(
          Family.SETTING, path, Verdict.NOT_REPORTED, number(wanted), "not reported", "");
    }
    String seen = number(stored.value());
    double scale = scale(path, wanted, stored);
    if (scale != 0) {
      String unit = scale == 1 ? "" : " (in " + unit(path) + ")";
      return new Check(Family.SETTING, path, Verdict.PASS, number(wanted), seen + unit, "");
    }
    return new Check(
        Family.SETTING, path, Verdict.FAIL, number(wanted), seen, advice(path, wanted, stored));
  }

  private static String advice(String path, double wanted, Value stored) {
    return path.endsWith("stepsPerMm")
        ? String.format(Locale.ROOT, "%.4f of the profile's value", stored.value() / wanted)
        : "";
  }

  /** Why a machine can differ from what was built, and the way back; for the head of a list. */
  public String explanation() {
    String text = "what the machine has stored overrides what its firmware was built with";
    return dialect.restoreBuild().isBlank() || dialect.save().isBlank()
        ? text
        : text
            + "; "
            + dialect.restoreBuild()
            + " then "
            + dialect.save()
            + " on an armed line goes back to the build";
  }

  /** The unit factor with which both agree to the digits reported; 0 when none does. */
  private static double scale(String path, double wanted, Value stored) {
    for (double scale : SCALES.getOrDefault(field(path), List.of(1.0))) {
      double rounding = 0.5 * Math.pow(10, -stored.decimals());
      double single = Math.abs(wanted * scale) * 1e-6;
      if (Math.abs(stored.value() - wanted * scale) <= rounding + single) {
        return scale;
      }
    }
    return 0;
  }

  /**
   * The unit factor that the firmware keeps a value in: that of the axes which agree already, else
   * the one that brings the report within a factor of five; 0 where neither tells.
   */
  private double firmwareScale(String path, double wanted, double seen, Map<String, Value> stored) {
    List<Double> scales = SCALES.getOrDefault(field(path), List.of(1.0));
    if (scales.size() == 1) {
      return scales.get(0);
    }
    for (Map.Entry<String, Double> other : expected().entrySet()) {
      Value value = stored.get(other.getKey());
      if (value != null && field(other.getKey()).equals(field(path))) {
        double agreed = scale(other.getKey(), other.getValue(), value);
        if (agreed != 0) {
          return agreed;
        }
      }
    }
    for (double scale : scales) {
      double ratio = seen / (wanted * scale);
      if (ratio > 0.2 && ratio < 5) {
        return scale;
      }
    }
    return 0;
  }

  private static String unit(String path) {
    return path.endsWith("maxSpeed") ? "mm/min" : "mA";
  }

  private static String field(String path) {
    return path.substring(path.indexOf('.', "axes.".length()) + 1);
  }

  private static String letter(String path) {
    return path.split("\\.")[1].toUpperCase(Locale.ROOT);
  }

  static String number(double value) {
    return new BigDecimal(value)
        .setScale(4, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
