package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** An axis has an endstop but does not home. */
@Rule(
    id = "GW-E018",
    slug = "homing-end-not-stated",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.REVIEW,
    summary = "An axis has an endstop but does not home",
    reads = {"axes.*.homing.end", "endstops.*.fitted"},
    source = "definition of homing")
public final class HomingEndNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.homing().end() != null) {
                return;
              }
              List<String> ends = new ArrayList<>();
              for (String end : List.of("Min", "Max")) {
                Endstop endstop = context.profile().endstops().get(name + end);
                if (endstop != null && Levels.fitted(endstop)) {
                  ends.add(end.toLowerCase(Locale.ROOT));
                }
              }
              String path = "axes." + name + ".homing.end";
              if (!ends.isEmpty()) {
                sink.report(
                    path,
                    "none stated; " + name + " has an endstop at " + String.join(" and ", ends),
                    Remedy.review("Home " + name + " to " + ends.get(0), path, ends.get(0)));
              }
            });
  }
}
