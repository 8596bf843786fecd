package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Remedy;
import java.util.ArrayList;
import java.util.List;

/**
 * The travel of an axis beside the side of the bed that it runs along, where both are stated.
 *
 * @param axis "x" or "y"
 * @param from lowest position, mm
 * @param to highest position, mm
 * @param bed the bed's side, mm
 */
record BedTravel(String axis, double from, double to, double bed) {
  static List<BedTravel> of(Context context) {
    List<BedTravel> out = new ArrayList<>();
    for (String name : List.of("x", "y")) {
      Axis axis = context.profile().axes().get(name);
      Double bed =
          name.equals("x")
              ? context.profile().printing().bedX()
              : context.profile().printing().bedY();
      if (axis != null && known(bed, axis.travelMin(), axis.travelMax())) {
        out.add(new BedTravel(name, axis.travelMin(), axis.travelMax(), bed));
      }
    }
    return out;
  }

  /** Its length, mm; negative where its ends are reversed. */
  double length() {
    return to - from;
  }

  String path() {
    return "axes." + axis + ".travelMax";
  }

  String words() {
    return "found "
        + n(from)
        + " to "
        + n(to)
        + " mm: "
        + n(length())
        + " mm over a bed of "
        + n(bed)
        + " mm";
  }

  static Remedy measure() {
    return Remedy.show("push the carriage from stop to stop by hand, supply off, and measure");
  }
}
