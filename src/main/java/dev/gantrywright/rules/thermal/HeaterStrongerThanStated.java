package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater's measured resistance makes more power than is stated. */
@Rule(
    id = "GW-T025",
    slug = "heater-stronger-than-stated",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater's measured resistance makes more power than is stated",
    reads = {"heaters.*.ohms", "heaters.*.watts", "heaters.*.volts"},
    source =
        "P = V² / R (Joule); copper gains 0.393 % a kelvin (IEC 60028), so a bed measured cold"
            + " may show 1.39 times its power; 1.5 times with tolerance (common practice, no published"
            + " source)")
public final class HeaterStrongerThanStated implements Check {
  /** What a bed of copper tracks shows cold, 1.39 times at 20 °C for 120 °C, with tolerance. */
  private static final double MOST = 1.5;

  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) ->
                MeasuredPower.of(heater)
                    .filter(power -> power.times() > MOST)
                    .ifPresent(
                        power ->
                            sink.report(
                                "heaters." + name + ".ohms",
                                power.words(),
                                Remedy.show(
                                    "do not switch it on; fit the heater that is stated, or state the one that is fitted"))));
  }
}
