package dev.gantrywright.ui;

import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;

/** A folder in the system's own window. */
final class ShownFolder {
  private ShownFolder() {}

  /** Opens it, off the toolkit's thread; the system may take its time. */
  static void open(Path folder) {
    Thread opener =
        new Thread(
            () -> {
              try {
                if (Desktop.isDesktopSupported()) {
                  Desktop.getDesktop().open(folder.toFile());
                }
              } catch (IOException | UnsupportedOperationException noOpener) {
                // A system without a file window: the path stands beside the button.
                return;
              }
            },
            "open folder");
    opener.setDaemon(true);
    opener.start();
  }
}
