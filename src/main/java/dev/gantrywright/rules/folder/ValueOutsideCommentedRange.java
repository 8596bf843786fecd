package dev.gantrywright.rules.folder;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.header.ValueRange;
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
              judge(
                  sink,
                  field.path(),
                  field.value().doubleValue(),
                  field.live().range(),
                  MappedField.at(field.live()));
            });
    MappedKeys.stated(context)
        .filter(key -> key.alone() && key.found().range() != null && key.value().isNumber())
        .forEach(
            key ->
                judge(sink, key.path(), key.value().doubleValue(), key.found().range(), key.at()));
  }

  private static void judge(Sink sink, String path, double value, ValueRange range, String at) {
    if (!range.contains(value)) {
      sink.report(
          path,
          "found "
              + n(value)
              + "; the comment at "
              + at
              + " allows "
              + n(range.min())
              + " to "
              + n(range.max()),
          Remedy.show("see why the firmware's authors drew the line there"));
    }
  }
}
