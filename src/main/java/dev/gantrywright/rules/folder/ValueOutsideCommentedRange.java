package dev.gantrywright.rules.folder;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The value is outside the range in the setting's own comment. */
@Rule(
    id = "GW-F009",
    slug = "value-outside-commented-range",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The value is outside the range in the setting's own comment",
    reads = {"**"},
    source = "the comment beside the setting")
public final class ValueOutsideCommentedRange implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.stated(context)
        .filter(
            field ->
                field.live() != null && field.live().range() != null && field.value().isNumber())
        .forEach(
            field -> {
              double value = field.value().doubleValue();
              if (!field.live().range().contains(value)) {
                sink.report(
                    field.path(),
                    "found "
                        + n(value)
                        + "; the comment at "
                        + MappedField.at(field.live())
                        + " allows "
                        + n(field.live().range().min())
                        + " to "
                        + n(field.live().range().max()),
                    Remedy.show("see why the firmware's authors drew the line there"));
              }
            });
  }
}
