package dev.gantrywright.rules.folder;

import dev.gantrywright.machine.Fields;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The name map speaks of a field that profiles do not have. */
@Rule(
    id = "GW-F014",
    slug = "map-names-unknown-field",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The name map speaks of a field that profiles do not have",
    reads = {"build.names"},
    source = "the field table of this program")
public final class MapNamesUnknownField implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.names().isEmpty()) {
      return;
    }
    context.names().get().fields().keySet().stream()
        .filter(path -> Fields.at(path).isEmpty())
        .forEach(
            path ->
                sink.report(
                    path,
                    "found in the name map; no profile field has this path",
                    Remedy.show("correct the path in the name map")));
  }
}
