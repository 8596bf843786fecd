package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;

/** Two heaters name the same output or sensor input. */
@Rule(
    id = "GW-T017",
    slug = "output-shared",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Two heaters name the same output or sensor input",
    reads = {"heaters.*.output", "heaters.*.input"},
    source = "definition")
public final class OutputShared implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, String> outputs = new LinkedHashMap<>();
    Map<String, String> inputs = new LinkedHashMap<>();
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              String other =
                  heater.output() == null ? null : outputs.putIfAbsent(heater.output(), name);
              if (other != null) {
                sink.report(
                    "heaters." + name + ".output",
                    "found " + heater.output() + ", which switches the " + other + " as well",
                    Remedy.show("state the output that this heater is really connected to"));
              }
              String same =
                  heater.input() == null ? null : inputs.putIfAbsent(heater.input(), name);
              if (same != null) {
                sink.report(
                    "heaters." + name + ".input",
                    "found " + heater.input() + ", which reads the " + same + " as well",
                    Remedy.show("state the input that this sensor is really plugged into"));
              }
            });
  }
}
