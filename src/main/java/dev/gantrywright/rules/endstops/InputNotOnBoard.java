package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Set;

/** The board has no input of this name. */
@Rule(
    id = "GW-E012",
    slug = "input-not-on-board",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The board has no input of this name",
    reads = {"endstops.*.pin", "endstops.*.fitted"},
    source = "the board sheet's inputs")
public final class InputNotOnBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.sheet().isEmpty() || context.sheet().get().inputs().isEmpty()) {
      return;
    }
    Set<String> inputs = context.sheet().get().inputs().keySet();
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && endstop.pin() != null
                  && !inputs.contains(endstop.pin())) {
                sink.report(
                    "endstops." + name + ".pin",
                    "found "
                        + endstop.pin()
                        + "; the "
                        + context.boardName()
                        + " has "
                        + String.join(", ", inputs),
                    Remedy.show("state the name that is printed beside the socket"));
              }
            });
  }
}
