package dev.gantrywright.rules.folder;

import dev.gantrywright.names.Spelled;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The name map does not say how the build settings spell this value. */
@Rule(
    id = "GW-F021",
    slug = "key-value-has-no-spelling",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The name map does not say how the build settings spell this value",
    reads = {"**"},
    source = "the name map")
public final class KeyValueHasNoSpelling implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedKeys.stated(context)
        .forEach(
            key -> {
              if (key.spelled() instanceof Spelled.Not not) {
                sink.report(
                    key.path(),
                    key.value()
                        + " for "
                        + key.name()
                        + ", which holds \""
                        + key.text()
                        + "\": "
                        + not.reason(),
                    Remedy.show("give the spelling in the name map"));
              }
            });
  }
}
