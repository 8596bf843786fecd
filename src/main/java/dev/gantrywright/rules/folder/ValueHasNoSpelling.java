package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The name map does not say how the folder spells this value. */
@Rule(
    id = "GW-F008",
    slug = "value-has-no-spelling",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The name map does not say how the folder spells this value",
    reads = {"**"},
    source = "the name map")
public final class ValueHasNoSpelling implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.stated(context)
        .forEach(
            field ->
                field
                    .unspelled()
                    .ifPresent(
                        reason ->
                            sink.report(
                                field.path(),
                                field.value()
                                    + " for "
                                    + field.entry().macro()
                                    + ", which holds \""
                                    + field.text()
                                    + "\": "
                                    + reason,
                                Remedy.show("give the spelling in the name map"))));
  }
}
