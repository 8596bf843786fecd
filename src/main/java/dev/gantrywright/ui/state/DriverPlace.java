package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A place for a motor driver on the board.
 *
 * @param name as the board or the profile calls it
 * @param axes the axes that it drives, in the profile's order; one at most where all is well
 */
public record DriverPlace(String name, List<String> axes) {
  public DriverPlace {
    axes = List.copyOf(axes);
  }

  /** Those of the board sheet in its order; without a sheet those that the profile names. */
  public static List<DriverPlace> of(PrinterProfile profile, Optional<BoardSheet> sheet) {
    List<String> names = new ArrayList<>();
    if (sheet.isPresent()) {
      names.addAll(sheet.get().sockets().keySet());
    } else {
      for (Map.Entry<String, Axis> axis : profile.axes().entrySet()) {
        String named = socketOf(axis.getKey(), axis.getValue());
        if (names.stream().noneMatch(named::equalsIgnoreCase)) {
          names.add(named);
        }
      }
    }
    return names.stream().map(name -> new DriverPlace(name, axesIn(name, profile))).toList();
  }

  private static List<String> axesIn(String name, PrinterProfile profile) {
    return profile.axes().entrySet().stream()
        .filter(axis -> name.equalsIgnoreCase(socketOf(axis.getKey(), axis.getValue())))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The socket that an axis names, or the one that bears its name. */
  static String socketOf(String name, Axis axis) {
    return axis.driver().socket() == null ? name : axis.driver().socket();
  }
}
