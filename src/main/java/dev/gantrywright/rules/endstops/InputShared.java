package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Two fitted endstops name the same input. */
@Rule(
    id = "GW-E006",
    slug = "input-shared",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Two fitted endstops name the same input",
    reads = {"endstops.*.pin", "endstops.*.fitted"},
    source = "definition")
public final class InputShared implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, String> first = new LinkedHashMap<>();
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (!Levels.fitted(endstop) || endstop.pin() == null) {
                return;
              }
              String other = first.putIfAbsent(endstop.pin(), name);
              if (other != null) {
                Set<String> taken = new HashSet<>();
                context.profile().endstops().values().forEach(e -> taken.add(e.pin()));
                List<String> free =
                    context
                        .sheet()
                        .map(
                            sheet ->
                                sheet.inputs().keySet().stream()
                                    .filter(pin -> !taken.contains(pin))
                                    .toList())
                        .orElse(List.of());
                sink.report(
                    "endstops." + name + ".pin",
                    "found "
                        + endstop.pin()
                        + ", where "
                        + other
                        + " is plugged in"
                        + (free.isEmpty()
                            ? ""
                            : "; free on the "
                                + context.boardName()
                                + ": "
                                + String.join(", ", free)),
                    Remedy.show("state the input that this endstop is really plugged into"));
              }
            });
  }
}
