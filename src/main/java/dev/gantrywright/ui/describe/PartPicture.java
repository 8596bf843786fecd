package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.draw.DriveTrain;
import dev.gantrywright.ui.draw.SerialFrame;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;

/** The picture of a part, where it has one. */
interface PartPicture {
  Region node();

  /** How wide it is drawn, pixels. */
  double width();

  /** Whether it stands below the fields instead of above them. */
  default boolean below() {
    return false;
  }

  void show(PrinterProfile profile);

  /**
   * Null where the part has no picture.
   *
   * @param sheet the board that the printer names
   * @param open opens the part of this id
   */
  static PartPicture of(String id, Supplier<Optional<BoardSheet>> sheet, Consumer<String> open) {
    String name = id.substring(id.indexOf('.') + 1);
    if (id.startsWith("axes.")) {
      DriveTrain picture = new DriveTrain();
      return of(
          picture,
          404,
          profile -> {
            if (profile.axes().containsKey(name)) {
              picture.show(profile.axes().get(name));
            }
          });
    }
    if (id.startsWith("endstops.")) {
      return new EndstopPicture(name);
    }
    if (id.startsWith("heaters.")) {
      return new HeaterPicture(name, sheet);
    }
    if (id.equals("board")) {
      return new BoardPicture(sheet, open);
    }
    if (id.equals("serial")) {
      SerialFrame picture = new SerialFrame();
      return of(picture, 470, profile -> picture.show(profile.serial()));
    }
    return null;
  }

  private static PartPicture of(Region node, double width, Consumer<PrinterProfile> show) {
    return new PartPicture() {
      private PrinterProfile shown;

      @Override
      public Region node() {
        return node;
      }

      @Override
      public double width() {
        return width;
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
