package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The value is none of those that the setting's comment lists. */
@Rule(
    id = "GW-F010",
    slug = "value-not-among-choices",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The value is none of those that the setting's comment lists",
    reads = {"**"},
    source = "the comment beside the setting")
public final class ValueNotAmongChoices implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.stated(context)
        .filter(field -> field.value().isNumber() && field.entry().values().isEmpty())
        .filter(field -> field.live() != null && field.live().choices().size() > 1)
        .filter(
            field ->
                field.live().choices().stream().allMatch(choice -> choice.matches("[-+]?[0-9.]+")))
        .forEach(
            field -> {
              double value = field.value().doubleValue();
              if (field.live().choices().stream()
                  .noneMatch(choice -> Double.parseDouble(choice) == value)) {
                sink.report(
                    field.path(),
                    "found "
                        + field.value()
                        + "; the comment at "
                        + MappedField.at(field.live())
                        + " lists "
                        + String.join(", ", field.live().choices()),
                    Remedy.show(
                        "take one of the listed values, or see whether the firmware takes others"));
              }
            });
  }
}
