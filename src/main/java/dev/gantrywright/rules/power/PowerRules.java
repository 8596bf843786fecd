package dev.gantrywright.rules.power;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class PowerRules {
  private PowerRules() {}

  public static List<Check> all() {
    return List.of(
        new SupplyOverloaded(),
        new SupplyWithoutMargin(),
        new SupplyAboveBoard(),
        new SupplyBelowBoard(),
        new FuseBelowLoad(),
        new FuseAboveWire(),
        new MainsHeaterNotEarthed(),
        new RelayTooSmall(),
        new MainsHeaterWithoutRelay(),
        new MainsHeaterWithoutCutoff(),
        new CutoffBelowLimit(),
        new StopCommandEmpty(),
        new SupplyDropLarge(),
        new SupplyNotStated(),
        new SupplyWireTooThin(),
        new CableLengthImplausible(),
        new SupplyFarAboveLoad(),
        new SupplyWireOversized(),
        new FuseNotStated(),
        new CutoffFarAboveRating());
  }
}
