package dev.gantrywright.rules.folder;

import dev.gantrywright.header.Setting;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The macro takes arguments and holds no single value. */
@Rule(
    id = "GW-F006",
    slug = "mapped-macro-takes-arguments",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The macro takes arguments and holds no single value",
    reads = {"**"},
    source = "ISO/IEC 9899 6.10.3, function-like macros")
public final class MappedMacroTakesArguments implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(
            field ->
                field.settings().stream()
                    .anyMatch(setting -> setting.on() && setting.kind() == Setting.Kind.FUNCTION))
        .forEach(
            field -> {
              Setting function =
                  field.settings().stream()
                      .filter(setting -> setting.kind() == Setting.Kind.FUNCTION)
                      .findFirst()
                      .orElseThrow();
              sink.report(
                  field.path(),
                  function.name()
                      + "(…) at "
                      + MappedField.at(function)
                      + " is a rule for making text, not a value",
                  Remedy.show("map the field to the macro that holds the value"));
            });
  }
}
