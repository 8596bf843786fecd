package dev.gantrywright.ui.state;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.HeaterOutput;
import dev.gantrywright.machine.Supply;
import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Context;
import dev.gantrywright.ui.quantity.Shown;
import java.util.Optional;

/**
 * What flows in a heater's circuit, and what the parts in it bear; null where it is not described.
 *
 * @param volts at the heater, V: those of the supply, or its own where it runs on mains
 * @param ohms of the heater, warm, Ω: R = U²/P at its rated voltage (definition of power)
 * @param amps I = U/R (Ohm's law)
 * @param watts that it takes at this voltage, W
 * @param relay whether a relay stands between board and heater
 * @param mains whether it runs on mains voltage
 * @param outputAmps rating of the board's output, A; from the board sheet
 * @param fuseAmps rating of the fuse between supply and board, A; from the profile
 * @param relayAmps rating of the relay, A; from the profile
 */
public record HeaterFigures(
    Double volts,
    Double ohms,
    Double amps,
    Double watts,
    boolean relay,
    boolean mains,
    Double outputAmps,
    Double fuseAmps,
    Double relayAmps) {
  public static HeaterFigures of(Heater heater, Supply supply, Optional<BoardSheet> sheet) {
    Double rated = positive(heater.volts());
    boolean mains = rated != null && rated >= Context.MAINS_VOLTS;
    boolean relay = heater.relayAmps() != null || mains;
    Double volts = mains || supply.volts() == null ? rated : positive(supply.volts());
    Double power = positive(heater.watts());
    Double ohms = rated == null || power == null ? null : HeaterPower.ohms(rated, power);
    Double amps = ohms == null || volts == null ? null : volts / ohms;
    Double output =
        sheet
            .map(each -> each.outputs().get(heater.output()))
            .map(HeaterOutput::maxAmps)
            .orElse(null);
    return new HeaterFigures(
        volts,
        ohms,
        amps,
        ohms == null || volts == null ? null : HeaterPower.watts(volts, ohms),
        relay,
        mains,
        relay ? null : output,
        mains ? null : positive(supply.fuseAmps()),
        heater.relayAmps());
  }

  private static Double positive(Double value) {
    return value != null && value > 0 ? value : null;
  }

  /** Share of a rating that the current takes, as {@code 69 %}; empty where either is unknown. */
  public Optional<String> share(Double rating) {
    return amps == null || rating == null || rating <= 0
        ? Optional.empty()
        : Optional.of(Shown.rough(100 * amps / rating) + "\u00a0%");
  }

  /** Whether more flows than the part is rated for. */
  public boolean over(Double rating) {
    return amps != null && rating != null && amps > rating;
  }
}
