package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater's power is out of proportion to what it heats. */
@Rule(
    id = "GW-T023",
    slug = "heater-power-implausible",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater's power is out of proportion to what it heats",
    reads = {"heaters.*.watts", "heaters.*.maximum", "printing.bedX", "printing.bedY"},
    source =
        "20 to 100 W for hot ends, 0.2 to 1 W/cm² for beds (common practice, no published source)")
public final class HeaterPowerImplausible implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double x = context.profile().printing().bedX();
    Double y = context.profile().printing().bedY();
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (!known(heater.watts(), heater.maximum())) {
                return;
              }
              String path = "heaters." + name + ".watts";
              if (heater.maximum() > 180 && (heater.watts() < 15 || heater.watts() > 120)) {
                sink.report(
                    path,
                    "found "
                        + n(heater.watts())
                        + " W for up to "
                        + n(heater.maximum())
                        + " °C; 20 to 100 W are usual",
                    Remedy.show("measure its resistance, supply off: P = V² / R"));
              }
              if (name.equals("bed") && known(x, y)) {
                double density = heater.watts() / (x / 10 * y / 10);
                if (density < 0.1 || density > 1.5) {
                  sink.report(
                      path,
                      "found "
                          + n(heater.watts())
                          + " W on "
                          + n(x)
                          + " x "
                          + n(y)
                          + " mm: "
                          + about(density)
                          + " W/cm², 0.2 to 1 W/cm² are usual",
                      Remedy.show("measure its resistance, supply off: P = V² / R"));
                }
              }
            });
  }
}
