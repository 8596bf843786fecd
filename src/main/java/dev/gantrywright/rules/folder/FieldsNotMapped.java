package dev.gantrywright.rules.folder;

import dev.gantrywright.names.NameEntry;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Some stated values have no place in this firmware's name map. */
@Rule(
    id = "GW-F017",
    slug = "fields-not-mapped",
    level = Level.NOTE,
    family = Family.FOLDER,
    summary = "Some stated values have no place in this firmware's name map",
    reads = {"**"},
    source = "the name map")
public final class FieldsNotMapped implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.names().isEmpty() || context.names().get().fields().isEmpty()) {
      return;
    }
    Map<String, NameEntry> mapped = context.names().get().fields();
    List<String> open = new ArrayList<>();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Map<String, Object> facts = new LinkedHashMap<>();
              facts.put("stepsPerMm", axis.stepsPerMm());
              facts.put("maxSpeed", axis.maxSpeed());
              facts.put("acceleration", axis.acceleration());
              facts.put("directionInverted", axis.directionInverted());
              facts.forEach(
                  (fact, value) -> {
                    String path = "axes." + name + "." + fact;
                    if (value != null && !mapped.containsKey(path)) {
                      open.add(path);
                    }
                  });
            });
    if (!open.isEmpty()) {
      sink.report(
          "build.names",
          open.size()
              + (open.size() == 1 ? " value is stated" : " values are stated")
              + " but mapped to no macro: "
              + String.join(", ", open));
    }
  }
}
