package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Fields;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** A printer as plain text: every value with its unit, then every remark. */
public final class ProfileText {
  private ProfileText() {}

  public static String of(PrinterProfile profile, List<Remark> remarks) {
    StringBuilder text = new StringBuilder();
    ObjectNode tree = ProfileValues.tree(profile);
    for (String path : ProfileValues.paths(profile)) {
      ProfileValues.get(tree, path)
          .ifPresent(
              value -> {
                String unit =
                    Fields.at(path)
                        .map(field -> field.unit() == null ? "" : " " + field.unit())
                        .orElse("");
                text.append(PlaceNames.field(path))
                    .append(": ")
                    .append(ProfileDesk.quoted(value))
                    .append(unit)
                    .append('\n');
              });
    }
    for (Remark remark : remarks) {
      text.append(remark.gravity().word())
          .append(": ")
          .append(remark.place())
          .append(": ")
          .append(remark.text())
          .append('\n');
    }
    return text.toString();
  }
}
