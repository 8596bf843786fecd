package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.draw.DriveTrain;
import dev.gantrywright.ui.draw.SerialFrame;
import javafx.scene.Node;

/** The picture of a part, where it has one. */
interface PartPicture {
  Node node();

  void show(PrinterProfile profile);

  /** Null where the part has no picture. */
  static PartPicture of(String id) {
    String name = id.substring(id.indexOf('.') + 1);
    if (id.startsWith("axes.")) {
      DriveTrain picture = new DriveTrain();
      return of(
          picture,
          profile -> {
            if (profile.axes().containsKey(name)) {
              picture.show(profile.axes().get(name));
            }
          });
    }
    if (id.startsWith("endstops.")) {
      return new EndstopPicture(name);
    }
    if (id.equals("serial")) {
      SerialFrame picture = new SerialFrame();
      return of(picture, profile -> picture.show(profile.serial()));
    }
    return null;
  }

  private static PartPicture of(Node node, java.util.function.Consumer<PrinterProfile> show) {
    return new PartPicture() {
      private PrinterProfile shown;

      @Override
      public Node node() {
        return node;
      }

      @Override
      public void show(PrinterProfile profile) {
        if (profile != shown) {
          shown = profile;
          show.accept(profile);
        }
      }
    };
  }
}
