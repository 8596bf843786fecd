package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;
import tools.jackson.databind.JsonNode;

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
        .forEach(
            field -> {
              judge(
                  sink,
                  field.path(),
                  field.value(),
                  field.live().choices(),
                  MappedField.at(field.live()));
            });
    MappedKeys.stated(context)
        .filter(key -> key.alone() && key.value().isNumber() && key.entry().values().isEmpty())
        .filter(key -> key.found().choices().size() > 1)
        .forEach(key -> judge(sink, key.path(), key.value(), key.found().choices(), key.at()));
  }

  private static void judge(
      Sink sink, String path, JsonNode value, List<String> choices, String at) {
    if (choices.stream().allMatch(choice -> choice.matches("[-+]?[0-9.]+"))
        && choices.stream()
            .noneMatch(choice -> Double.parseDouble(choice) == value.doubleValue())) {
      sink.report(
          path,
          "found " + value + "; the comment at " + at + " lists " + String.join(", ", choices),
          Remedy.show("take one of the listed values, or see whether the firmware takes others"));
    }
  }
}
