package dev.gantrywright.rules.folder;

import dev.gantrywright.header.Setting;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.NearMiss;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Safety;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The name map leads to a macro that the folder does not have. */
@Rule(
    id = "GW-F001",
    slug = "mapped-macro-missing",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.REVIEW,
    summary = "The name map leads to a macro that the folder does not have",
    reads = {"**"},
    source = "the firmware folder")
public final class MappedMacroMissing implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(field -> field.settings().isEmpty())
        .forEach(
            field -> {
              String macro = field.entry().macro();
              Set<String> names =
                  field.folder().settings().stream().map(Setting::name).collect(Collectors.toSet());
              Setting near =
                  NearMiss.of(macro, names)
                      .flatMap(name -> field.folder().named(name).stream().findFirst())
                      .orElse(null);
              sink.report(
                  field.path(),
                  macro
                      + " stands nowhere in the folder"
                      + (near == null
                          ? ""
                          : "; " + near.name() + " does, at " + MappedField.at(near)),
                  near == null
                      ? Remedy.show("let the folder's names be learned again")
                      : new Remedy(
                          "Map it to " + near.name(), Safety.REVIEW, edits(context, macro, near)));
            });
  }

  private static List<Remedy.Edit> edits(Context context, String macro, Setting near) {
    List<Remedy.Edit> edits = new ArrayList<>();
    MappedFields.of(context)
        .filter(field -> field.entry().macro().equals(macro))
        .forEach(
            field ->
                edits.add(
                    new Remedy.SetName(
                        field.path(),
                        near.name(),
                        field.entry().element(),
                        near.file(),
                        near.line())));
    return edits;
  }
}
