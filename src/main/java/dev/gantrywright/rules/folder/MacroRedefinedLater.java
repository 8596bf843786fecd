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

/** The macro is defined again further down, with another value. */
@Rule(
    id = "GW-F005",
    slug = "macro-redefined-later",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The macro is defined again further down, with another value",
    reads = {"**"},
    source =
        "ISO/IEC 9899 6.10.3 forbids it; compilers report it and take the later one (common practice, no published source)")
public final class MacroRedefinedLater implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(field -> field.liveOnes().stream().map(Setting::value).distinct().count() > 1)
        .forEach(
            field -> {
              String places =
                  field.liveOnes().stream()
                      .map(setting -> MappedField.at(setting) + " (" + setting.value() + ")")
                      .collect(Collectors.joining(", "));
              sink.report(
                  field.path(),
                  field.entry().macro()
                      + " stands at "
                      + places
                      + (field.live() == null
                          ? ""
                          : "; " + MappedField.at(field.live()) + " counts at the end"),
                  Remedy.show("leave one definition in the firmware folder"));
            });
  }
}
