package dev.gantrywright.rules.folder;

import dev.gantrywright.header.Setting;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.stream.Collectors;

/** The macro is defined more than once, each time alike. */
@Rule(
    id = "GW-F004",
    slug = "macro-defined-twice",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The macro is defined more than once, each time alike",
    reads = {"**"},
    source = "ISO/IEC 9899 6.10.3: a macro may be defined again only with the same replacement")
public final class MacroDefinedTwice implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(field -> field.liveOnes().size() > 1)
        .filter(field -> field.liveOnes().stream().map(Setting::value).distinct().count() == 1)
        .forEach(
            field ->
                sink.report(
                    field.path(),
                    field.entry().macro()
                        + " stands at "
                        + field.liveOnes().stream()
                            .map(MappedField::at)
                            .collect(Collectors.joining(" and ")),
                    Remedy.show("take one of them out of the firmware folder")));
  }
}
