package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The axes of one folder, and which of them a word names, as a set of bits in the order of {@link
 * #names}. Every folder has x, y, z and e; further ones are those that {@link FurtherAxes} found.
 */
final class Axes {
  /** Stands for all axes (or ends) where one value serves them. */
  static final int ALL = -1;

  static final int X = 1;
  static final int Y = 2;
  static final int Z = 4;
  static final int E = 8;

  private static final List<String> USUAL = List.of("x", "y", "z", "e");

  private static final Map<String, Integer> WORDS =
      Map.of("e0", E, "ex", E, "x1", X, "y1", Y, "z1", Z, "x0", X, "y0", Y, "z0", Z);

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

  private final List<String> names;
  private final Map<String, Integer> known = new HashMap<>();

  /**
   * The axes of a folder.
   *
   * @param further names of those beside x, y, z and e, as the profile calls them
   */
  Axes(List<String> further) {
    List<String> all = new ArrayList<>(USUAL);
    all.addAll(further);
    names = List.copyOf(all);
  }

  /** x, y, z and e. */
  static Axes usual() {
    return new Axes(List.of());
  }

  /** The names that the profile gives them, in the order of their bits. */
  List<String> names() {
    return names;
  }

  /** The name of the only axis in a set of bits. */
  String name(int bit) {
    return names.get(Integer.numberOfTrailingZeros(bit));
  }

  /** The bits of the extruders beyond the first, in their order. */
  List<Integer> furtherExtruders() {
    List<Integer> bits = new ArrayList<>();
    for (int i = USUAL.size(); i < names.size(); i++) {
      if (names.get(i).startsWith("e")) {
        bits.add(1 << i);
      }
    }
    return bits;
  }

  /** The axes that a word names; 0 where it is another word. */
  int of(String word) {
    Integer bits = known.get(word);
    if (bits == null) {
      bits = read(word);
      known.put(word, bits);
    }
    return bits;
  }

  private int read(String word) {
    int named = names.indexOf(word);
    if (named >= 0) {
      return 1 << named;
    }
    Integer usual = WORDS.get(word);
    if (usual != null) {
      return usual;
    }
    if (word.isEmpty() || word.length() > names.size()) {
      return 0;
    }
    int bits = 0;
    for (int i = 0; i < word.length(); i++) {
      int axis = names.indexOf(word.substring(i, i + 1));
      if (axis < 0 || (bits & (1 << axis)) != 0) {
        return 0;
      }
      bits |= 1 << axis;
    }
    boolean inOrder = "xyze".contains(word) || word.equals("xz") || word.startsWith("xyz");
    return inOrder ? bits : 0;
  }

  static boolean extruder(String word) {
    return EXTRUDER.contains(word);
  }
}
