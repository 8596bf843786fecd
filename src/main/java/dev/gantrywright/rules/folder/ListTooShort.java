package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The brace list has no such element. */
@Rule(
    id = "GW-F012",
    slug = "list-too-short",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The brace list has no such element",
    reads = {"**"},
    source = "the firmware folder")
public final class ListTooShort implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.stated(context)
        .filter(field -> field.live() != null && field.entry().element() != null)
        .filter(field -> field.text() == null)
        .forEach(
            field ->
                sink.report(
                    field.path(),
                    "element "
                        + field.entry().element()
                        + " of "
                        + field.entry().macro()
                        + " at "
                        + MappedField.at(field.live())
                        + ", which has "
                        + MappedField.parts(field.live().value()).size()
                        + ", counted from 0",
                    Remedy.show("see the order of axes in the comment and correct the name map")));
  }
}
