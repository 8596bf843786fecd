package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;

/** Two fields lead to the same place and want different values. */
@Rule(
    id = "GW-F013",
    slug = "fields-share-macro",
    level = Level.ERROR,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Two fields lead to the same place and want different values",
    reads = {"**"},
    source = "the name map")
public final class FieldsShareMacro implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, MappedField> first = new LinkedHashMap<>();
    MappedFields.stated(context)
        .forEach(
            field -> {
              MappedField other =
                  first.putIfAbsent(
                      field.entry().macro() + "[" + field.entry().element() + "]", field);
              if (other != null
                  && !other.value().equals(field.value())
                  && other.value().isNumber() == field.value().isNumber()
                  && other.value().isBoolean() == field.value().isBoolean()) {
                sink.report(
                    field.path(),
                    field.entry().macro()
                        + (field.entry().element() == null
                            ? ""
                            : ", element " + field.entry().element())
                        + " is to be "
                        + field.value()
                        + " for this field and "
                        + other.value()
                        + " for "
                        + other.path(),
                    Remedy.show("correct one of the two in the name map"));
              }
            });
  }
}
