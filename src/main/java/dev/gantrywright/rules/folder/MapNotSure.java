package dev.gantrywright.rules.folder;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The name map is not sure of the macro for this field. */
@Rule(
    id = "GW-F011",
    slug = "map-not-sure",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The name map is not sure of the macro for this field",
    reads = {"**"},
    source = "the name map")
public final class MapNotSure implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.stated(context)
        .filter(field -> !field.entry().sure())
        .forEach(
            field ->
                sink.report(
                    field.path(),
                    field.entry().macro()
                        + " with confidence "
                        + n(field.entry().confidence())
                        + (field.entry().others().isEmpty()
                            ? ""
                            : "; next "
                                + field.entry().others().get(0).macro()
                                + " with "
                                + n(field.entry().others().get(0).confidence())),
                    Remedy.show("look at the lines and confirm one of them in the name map")));
  }
}
