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

/** Whether the macro counts depends on something that the folder does not settle. */
@Rule(
    id = "GW-F003",
    slug = "mapped-macro-open",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Whether the macro counts depends on something that the folder does not settle",
    reads = {"**"},
    source = "ISO/IEC 9899 6.10.1, conditional inclusion")
public final class MappedMacroOpen implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(field -> field.liveOnes().isEmpty())
        .filter(
            field ->
                field.settings().stream()
                    .anyMatch(setting -> setting.on() && setting.state() == State.OPEN))
        .forEach(
            field -> {
              Setting open =
                  field.settings().stream()
                      .filter(setting -> setting.state() == State.OPEN)
                      .findFirst()
                      .orElseThrow();
              sink.report(
                  field.path(),
                  open.name()
                      + " at "
                      + MappedField.at(open)
                      + " depends on what the build defines: "
                      + open.reason(),
                  Remedy.show("see what the build command defines"));
            });
  }
}
