package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater's measured resistance makes less power than is stated. */
@Rule(
    id = "GW-T026",
    slug = "heater-weaker-than-stated",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater's measured resistance makes less power than is stated",
    reads = {"heaters.*.ohms", "heaters.*.watts", "heaters.*.volts"},
    source =
        "P = V² / R (Joule); a heater's resistance does not fall as it warms, so a quarter less is"
            + " more than tolerance (common practice, no published source)")
public final class HeaterWeakerThanStated implements Check {
  /** Less than this share of the stated power is more than tolerance: common practice. */
  private static final double LEAST = 0.75;

  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) ->
                MeasuredPower.of(heater)
                    .filter(power -> power.times() < LEAST)
                    .ifPresent(
                        power ->
                            sink.report(
                                "heaters." + name + ".ohms",
                                power.words(),
                                Remedy.show(
                                    "measure again with both wires off the board; then fit the heater that is stated, or state the one that is fitted"))));
  }
}
