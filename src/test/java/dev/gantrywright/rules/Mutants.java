package dev.gantrywright.rules;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/**
 * Plausible wrong values for every stated field of a profile: a flag turned round, another choice,
 * a decimal point one place off, twice and half where the machine fixes the number, two letters
 * swapped, the value of a neighbour.
 */
final class Mutants {
  /** One field with one wrong value. */
  record Mutant(String printer, String path, String pattern, JsonNode was, Object wrong) {}

  /** Fields whose value no rule could judge: free words, and files that opening reports itself. */
  static final Set<String> WORDS =
      Set.of(
          "format", "name", "notes", "board.sheet", "build.folder", "build.names", "build.flash");

  /**
   * Numbers that the parts of the machine fix: half or twice is wrong. Elsewhere, as in speeds and
   * lengths of cable, it may be somebody's choice, and only the decimal point is moved.
   */
  private static final Set<String> FIXED_BY_THE_MACHINE =
      Set.of(
          "axes.*.stepsPerMm",
          "axes.*.travelMax",
          "axes.*.motor.fullSteps",
          "axes.*.driver.microsteps",
          "axes.*.driver.current",
          "axes.*.driver.senseOhms",
          "axes.*.driver.vref",
          "axes.*.drive.pitch",
          "axes.*.drive.teeth",
          "axes.*.drive.lead",
          "axes.*.drive.gearDiameter",
          "axes.*.drive.ratio",
          "endstops.*.voltage",
          "heaters.*.pullUpOhms",
          "heaters.*.maximum",
          "heaters.*.rated",
          "heaters.*.volts",
          "supply.volts",
          "printing.bedX",
          "printing.bedY");

  private Mutants() {}

  static List<Mutant> of(String printer, PrinterProfile profile) {
    List<Mutant> mutants = new ArrayList<>();
    for (String path : ProfileValues.paths(profile)) {
      Field field = Fields.at(path).orElseThrow();
      JsonNode was = ProfileValues.get(profile, path).orElse(null);
      if (was == null || WORDS.contains(field.path())) {
        continue;
      }
      for (Object wrong : wrong(field, was, path, profile)) {
        mutants.add(new Mutant(printer, path, field.path(), was, wrong));
      }
    }
    return mutants;
  }

  private static List<Object> wrong(
      Field field, JsonNode was, String path, PrinterProfile profile) {
    return switch (field.type()) {
      case FLAG -> List.of(!was.booleanValue());
      case CHOICE ->
          field.choices().stream()
              .filter(choice -> !choice.equals(was.asString()))
              .map(choice -> (Object) choice)
              .toList();
      case NUMBER, INTEGER -> numbers(field, was);
      case TEXT -> texts(was.asString(), path, profile);
      case LIST -> List.of(List.of(was.get(0).asString()));
      case MAP -> List.of();
    };
  }

  private static List<Object> numbers(Field field, JsonNode was) {
    boolean whole = field.type() == dev.gantrywright.machine.FieldType.INTEGER;
    List<Object> wrong = new ArrayList<>();
    double value = was.doubleValue();
    double[] slips =
        value == 0
            ? new double[] {10, -10}
            : FIXED_BY_THE_MACHINE.contains(field.path())
                ? new double[] {value * 10, value / 10, value * 2, value / 2}
                : new double[] {value * 10, value / 10};
    for (double slip : slips) {
      if (whole && slip != Math.rint(slip)
          || field.minimum() != null && slip < field.minimum()
          || field.maximum() != null && slip > field.maximum()) {
        continue;
      }
      wrong.add(whole ? (Object) (int) slip : (Object) Double.valueOf(Shown.n(slip)));
    }
    return wrong;
  }

  private static List<Object> texts(String was, String path, PrinterProfile profile) {
    List<Object> wrong = new ArrayList<>();
    if (was.length() > 1) {
      char[] letters = was.toCharArray();
      int last = letters.length - 1;
      char kept = letters[last];
      letters[last] = letters[last - 1];
      letters[last - 1] = kept;
      if (!new String(letters).equals(was)) {
        wrong.add(new String(letters));
      }
    }
    neighbour(was, path, profile).ifPresent(wrong::add);
    return wrong;
  }

  /** The same field of another axis, endstop or heater. */
  private static java.util.Optional<Object> neighbour(
      String was, String path, PrinterProfile profile) {
    String[] parts = path.split("\\.");
    if (parts.length < 3) {
      return java.util.Optional.empty();
    }
    String tail = path.substring(parts[0].length() + 1 + parts[1].length());
    return ProfileValues.paths(profile).stream()
        .filter(other -> other.startsWith(parts[0] + ".") && other.endsWith(tail))
        .flatMap(other -> ProfileValues.get(profile, other).stream())
        .map(JsonNode::asString)
        .filter(value -> !value.equals(was))
        .map(value -> (Object) value)
        .findFirst();
  }
}
