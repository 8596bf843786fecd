package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** No upper temperature limit is stated. */
@Rule(
    id = "GW-T013",
    slug = "limit-not-stated",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "No upper temperature limit is stated",
    reads = {"heaters.*.maximum", "heaters.*.sensor"},
    source = "principle of a second, independent condition to stop heating")
public final class LimitNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.maximum() == null && heater.sensor() != null) {
                sink.report(
                    "heaters." + name + ".maximum",
                    "none stated: the folder's own limit stays, which is another machine's",
                    Remedy.show("state a limit below the rating of the heated part"));
              }
            });
  }
}
