package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.stream.Collectors;

/** The build settings give the key twice in one section. */
@Rule(
    id = "GW-F020",
    slug = "key-given-twice",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The build settings give the key twice in one section",
    reads = {"**"},
    source = "readers of such files differ: some take the last, some refuse (common practice)")
public final class KeyGivenTwice implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedKeys.stated(context)
        .filter(key -> key.found() != null && key.alike().size() > 1)
        .forEach(
            key ->
                sink.report(
                    key.path(),
                    key.name()
                        + " stands at "
                        + key.alike().stream()
                            .map(e -> key.document().path() + ":" + e.line())
                            .collect(Collectors.joining(" and ")),
                    Remedy.show("take one of them out of the firmware folder")));
  }
}
