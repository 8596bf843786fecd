package dev.gantrywright.rules.folder;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Set;

/** The setting's comment names another unit than the field's. */
@Rule(
    id = "GW-F016",
    slug = "unit-differs-from-comment",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The setting's comment names another unit than the field's",
    reads = {"**"},
    source = "the comment beside the setting")
public final class UnitDiffersFromComment implements Check {
  @Override
  public void check(Context context, Sink sink) {
    MappedFields.macros(context)
        .filter(
            field ->
                field.live() != null
                    && field.entry().unit() == null
                    && !field.live().unit().isBlank())
        .forEach(
            field -> {
              String name = field.entry().macro() + " at " + MappedField.at(field.live());
              judge(sink, field.path(), field.live().unit(), name);
            });
    MappedKeys.stated(context)
        .filter(key -> key.alone() && key.entry().unit() == null)
        .forEach(
            key -> judge(sink, key.path(), key.found().unit(), key.name() + " at " + key.at()));
  }

  private static void judge(Sink sink, String path, String unit, String setting) {
    String own = Fields.at(path).map(Field::unit).orElse(null);
    String theirs = unit.strip();
    if (own != null && UNITS.contains(own) && UNITS.contains(theirs) && !own.equals(theirs)) {
      sink.report(
          path,
          setting + " is in " + theirs + ", the field in " + own,
          Remedy.show("give the unit in the name map"));
    }
  }

  private static final Set<String> UNITS =
      Set.of("mm/s", "mm/min", "A", "mA", "V", "mV", "mm", "m", "Hz", "kHz", "s", "ms");
}
