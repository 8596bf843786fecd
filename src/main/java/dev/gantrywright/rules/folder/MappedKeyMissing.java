package dev.gantrywright.rules.folder;

import dev.gantrywright.header.IniDocument;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.NearMiss;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The name map leads to a build-settings key that the folder does not have. */
@Rule(
    id = "GW-F018",
    slug = "mapped-key-missing",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The name map leads to a build-settings key that the folder does not have",
    reads = {"**"},
    source = "the firmware folder")
public final class MappedKeyMissing implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedKeys.stated(context)
        .filter(key -> key.found() == null)
        .forEach(
            key -> {
              Set<String> keys =
                  key.folder().buildSettings().stream()
                      .flatMap(document -> document.entries().stream())
                      .map(IniDocument.Entry::key)
                      .collect(Collectors.toSet());
              Optional<String> near = NearMiss.of(key.entry().macro(), keys);
              sink.report(
                  key.path(),
                  key.name()
                      + " stands nowhere in the build settings"
                      + near.map(name -> "; " + name + " does").orElse(""),
                  Remedy.show("let the folder's names be learned again, or pick the key by hand"));
            });
  }
}
