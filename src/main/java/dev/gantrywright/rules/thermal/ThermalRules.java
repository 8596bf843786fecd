package dev.gantrywright.rules.thermal;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class ThermalRules {
  private ThermalRules() {}

  public static List<Check> all() {
    return List.of(
        new PullUpDiffersFromBoard(),
        new SensorNotInCatalogue(),
        new LimitAboveSensor(),
        new LimitAboveRating(),
        new ConverterTooCoarse(),
        new HeaterVoltsDiffer(),
        new OutputOverloaded(),
        new OutputVoltsExceeded(),
        new WireTooThin(),
        new RunawayProtectionOff(),
        new OpenSensorUnnoticed(),
        new MinimumAboveRoom(),
        new LimitNotStated(),
        new LimitsReversed(),
        new BangBangOnMains(),
        new OutputNotOnBoard(),
        new OutputShared(),
        new VoltageDropLarge(),
        new LimitHardlyBelowRating(),
        new ProtectionNotStated(),
        new BangBangOnNozzle(),
        new LimitFarBelowRating(),
        new HeaterPowerImplausible(),
        new WireOversized(),
        new HeaterStrongerThanStated(),
        new HeaterWeakerThanStated());
  }
}
