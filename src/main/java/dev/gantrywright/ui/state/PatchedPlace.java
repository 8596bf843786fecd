package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import java.nio.file.Path;
import java.util.Locale;

/** Where a printer's patched folder is proposed to go: beside the firmware folder. */
public final class PatchedPlace {
  private PatchedPlace() {}

  /** Null where no firmware folder is open. */
  public static Path of(OpenPrinter printer) {
    if (printer.folder() == null) {
      return null;
    }
    Path root = printer.folder().root().toAbsolutePath().normalize();
    String name = printer.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return root.resolveSibling(root.getFileName() + "-" + name);
  }
}
