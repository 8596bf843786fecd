package dev.gantrywright.rules.power;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The stop command is empty. */
@Rule(
    id = "GW-P012",
    slug = "stop-command-empty",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SAFE,
    summary = "The stop command is empty",
    reads = {"link.stop"},
    source =
        "IEC 60204-1:2016 9.2.3.3, stop overrides start; 10.7, an emergency stop is a device of its own (memory)")
public final class StopCommandEmpty implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String stop = context.profile().link().stop();
    if (stop != null && stop.isBlank()) {
      sink.report(
          "link.stop",
          "found an empty text: the stop key would send nothing",
          Remedy.safe("Use the usual command", "link.stop", null));
    }
  }
}
