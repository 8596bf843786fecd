package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Safety;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** A build-settings key no longer stands where the name map saw it. */
@Rule(
    id = "GW-F019",
    slug = "key-moved-since-map",
    level = Level.NOTE,
    family = Family.FOLDER,
    fix = Rule.Fix.SAFE,
    summary = "A build-settings key no longer stands where the name map saw it",
    reads = {"**"},
    source = "the firmware folder")
public final class KeyMovedSinceMap implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedKeys.stated(context)
        .filter(key -> key.found() != null && key.entry().file() != null)
        .filter(key -> key.entry().line() != null)
        .filter(
            key ->
                !key.document().path().equals(key.entry().file())
                    || key.found().line() != key.entry().line())
        .forEach(
            key ->
                sink.report(
                    key.path(),
                    key.name()
                        + " moved from "
                        + key.entry().file()
                        + ":"
                        + key.entry().line()
                        + " to "
                        + key.at(),
                    new Remedy(
                        "Note the new place",
                        Safety.SAFE,
                        List.of(
                            new Remedy.SetName(
                                key.path(),
                                key.entry().macro(),
                                key.entry().element(),
                                key.document().path(),
                                key.found().line())))));
  }
}
