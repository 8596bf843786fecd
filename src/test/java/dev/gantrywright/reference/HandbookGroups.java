package dev.gantrywright.reference;

import dev.gantrywright.image.ImageFormatRows;
import dev.gantrywright.load.CardRows;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Who evaluates which group of the handbook. A package that serves a group adds its class here. */
final class HandbookGroups {
  private static final Map<String, GroupRows> BY_GROUP =
      List.of(
              new AvrBaudRows(),
              new Lpc17Rows(),
              new McuMemoryRows(),
              new DriverRows(),
              new MotionRows(),
              new TemperatureRows(),
              new ElectricalRows(),
              new EndstopRows(),
              new SerialRows(),
              new ControllerRows(),
              new StepperSpeedRows(),
              new ImageFormatRows(),
              new CardRows())
          .stream()
          .collect(Collectors.toUnmodifiableMap(GroupRows::group, Function.identity()));

  private HandbookGroups() {}

  static Use use(HandbookRow row) {
    GroupRows rows = BY_GROUP.get(row.group());
    return rows == null ? Use.none("no part of the program serves this group yet") : rows.use(row);
  }
}
