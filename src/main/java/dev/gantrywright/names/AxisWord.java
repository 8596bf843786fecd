package dev.gantrywright.names;

import java.util.List;
import java.util.Map;

/** Which axes a word names, as a set of bits in the order of {@link #NAMES}. */
final class AxisWord {
  /** The axes that are learned, by their profile names. */
  static final List<String> NAMES = List.of("x", "y", "z", "e");

  static final int ALL = 15;
  static final int X = 1;
  static final int Y = 2;
  static final int Z = 4;
  static final int E = 8;

  private static final Map<String, Integer> WORDS =
      Map.ofEntries(
          Map.entry("e0", E),
          Map.entry("ex", E),
          Map.entry("x1", X),
          Map.entry("y1", Y),
          Map.entry("z1", Z),
          Map.entry("x0", X),
          Map.entry("y0", Y),
          Map.entry("z0", Z));

  /** Words that name the extruder where a motor is spoken of. */
  private static final List<String> EXTRUDER =
      List.of(
          "extruder",
          "extrude",
          "extr",
          "ext",
          "feeder",
          "extrudeur",
          "extrusor",
          "estrusore",
          "ekstruder",
          "extrudeer",
          "extrusion",
          "filamentdrive",
          "vorschubmotor");

  private AxisWord() {}

  /** The axes that a word of letters x, y, z, e names; 0 where it is another word. */
  static int of(String word) {
    Integer known = WORDS.get(word);
    if (known != null) {
      return known;
    }
    if (word.isEmpty() || word.length() > 4) {
      return 0;
    }
    int bits = 0;
    for (int i = 0; i < word.length(); i++) {
      int axis = NAMES.indexOf(word.substring(i, i + 1));
      if (axis < 0 || (bits & (1 << axis)) != 0) {
        return 0;
      }
      bits |= 1 << axis;
    }
    boolean oneOrInOrder = word.length() == 1 || "xyze".contains(word) || word.equals("xz");
    return oneOrInOrder ? bits : 0;
  }

  static boolean extruder(String word) {
    return EXTRUDER.contains(word);
  }
}
