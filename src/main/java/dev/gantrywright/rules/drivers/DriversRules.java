package dev.gantrywright.rules.drivers;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class DriversRules {
  private DriversRules() {}

  public static List<Check> all() {
    return List.of(
        new CurrentAboveMotor(),
        new CurrentFarBelowMotor(),
        new VrefGivesOtherCurrent(),
        new FullScaleExceeded(),
        new CurrentAboveDriver(),
        new CurrentAboveSocket(),
        new SenseResistorDiffers(),
        new MicrostepsNotInDriver(),
        new MicrostepsDifferFromJumpers(),
        new SupplyAboveDriver(),
        new SupplyBelowDriver(),
        new AddressShared(),
        new AddressOutOfRange(),
        new DriverNotInCatalogue(),
        new MotorTooSlowForSpeed(),
        new MotorRunsHot(),
        new WindingVoltageAboveSupply(),
        new DriverCurrentNotListenedTo(),
        new VrefAboveRange(),
        new SocketNotOnBoard(),
        new SocketShared(),
        new WindingTimeConstantUnusual(),
        new DriverRunsHot(),
        new LineWithoutAddresses(),
        new MicrostepsNeedLine(),
        new SenseResistorNotStated());
  }
}
