package dev.gantrywright.rules.folder;

import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The macro stands where the compiler never looks. */
@Rule(
    id = "GW-F002",
    slug = "mapped-macro-dead",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The macro stands where the compiler never looks",
    reads = {"**"},
    source = "ISO/IEC 9899 6.10.1, conditional inclusion")
public final class MappedMacroDead implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(field -> field.live() == null && !field.settings().isEmpty())
        .filter(
            field -> field.settings().stream().noneMatch(setting -> setting.state() != State.DEAD))
        .forEach(
            field -> {
              Setting first = field.settings().get(0);
              sink.report(
                  field.path(),
                  first.name() + " at " + MappedField.at(first) + " is left out: " + first.reason(),
                  Remedy.show(
                      "meet the condition, or take the field out of the name map for this board"));
            });
  }
}
