package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Fields;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** A printer as plain text: every value with its unit, then every note. */
public final class ProfileText {
  private ProfileText() {}

  /** What is known of the open printer; says so where a part of it is still being read. */
  public static String of(PrinterDesk desk) {
    String text = of(desk.profile(), desk.notes());
    return desk.judged().get().whole() ? text : text + Texts.of("copy.partly") + "\n";
  }

  static String of(PrinterProfile profile, List<MarginNote> notes) {
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
    for (MarginNote note : notes) {
      text.append(note.gravity().word())
          .append(": ")
          .append(note.place())
          .append(": ")
          .append(note.text())
          .append('\n');
    }
    return text.toString();
  }
}
