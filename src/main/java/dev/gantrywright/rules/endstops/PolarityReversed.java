package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Locale;

/** The firmware reads this endstop the wrong way round. */
@Rule(
    id = "GW-E001",
    slug = "polarity-reversed",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SAFE,
    summary = "The firmware reads this endstop the wrong way round",
    reads = {
      "endstops.*.inverted",
      "endstops.*.contact",
      "endstops.*.sensor",
      "endstops.*.input",
      "endstops.*.pullUp",
      "endstops.*.fitted"
    },
    source =
        "truth table of contact, pull and sensor; NPN sinks and PNP sources after IEC 60947-5-2")
public final class PolarityReversed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              Boolean told = endstop.inverted();
              if (!Levels.fitted(endstop) || told == null) {
                return;
              }
              Levels.of(endstop)
                  .filter(levels -> levels.activeLow() != told)
                  .ifPresent(
                      levels -> {
                        String path = "endstops." + name + ".inverted";
                        sink.report(
                            path,
                            "found "
                                + told
                                + "; "
                                + Levels.words(endstop)
                                + " reads "
                                + levels.idle().name().toLowerCase(Locale.ROOT)
                                + " at rest and "
                                + levels.pressed().name().toLowerCase(Locale.ROOT)
                                + " when touched, so it must be "
                                + levels.activeLow(),
                            Remedy.safe(
                                "Set it to " + levels.activeLow(), path, levels.activeLow()));
                      });
            });
  }
}
