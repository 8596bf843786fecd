package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;

/** A cable is shorter or longer than the machine lets it be. */
@Rule(
    id = "GW-P016",
    slug = "cable-length-implausible",
    level = Level.NOTE,
    family = Family.POWER,
    summary = "A cable is shorter or longer than the machine lets it be",
    reads = {"supply.wireLength", "heaters.*.wireLength"},
    source = "0.2 to 3 m in machines of this kind (common practice, no published source)")
public final class CableLengthImplausible implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, Double> lengths = new LinkedHashMap<>();
    lengths.put("supply.wireLength", context.profile().supply().wireLength());
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> lengths.put("heaters." + name + ".wireLength", heater.wireLength()));
    lengths.forEach(
        (path, metres) -> {
          if (metres != null && (metres < 0.1 || metres > 5)) {
            sink.report(path, "found " + n(metres) + " m; 0.2 to 3 m are usual");
          }
        });
  }
}
