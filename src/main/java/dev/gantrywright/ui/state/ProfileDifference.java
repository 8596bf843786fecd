package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.node.ObjectNode;

/** The values in which two printers differ. */
public final class ProfileDifference {
  private ProfileDifference() {}

  /**
   * One value.
   *
   * @param left as the first printer has it, in words
   * @param right as the second has it
   */
  public record Row(String path, String left, String right) {}

  /** In the order of the file format. */
  public static List<Row> of(PrinterProfile left, PrinterProfile right) {
    ObjectNode one = ProfileValues.tree(left);
    ObjectNode other = ProfileValues.tree(right);
    Set<String> paths = new LinkedHashSet<>(ProfileValues.paths(left));
    paths.addAll(ProfileValues.paths(right));
    List<Row> rows = new ArrayList<>();
    for (String path : paths) {
      String a = text(one, path);
      String b = text(other, path);
      if (!a.equals(b)) {
        rows.add(new Row(path, a, b));
      }
    }
    return rows;
  }

  private static String text(ObjectNode tree, String path) {
    return ProfileValues.get(tree, path).map(ProfileDesk::quoted).orElse(Texts.of("value.none"));
  }
}
