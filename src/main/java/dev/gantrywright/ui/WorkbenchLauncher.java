package dev.gantrywright.ui;

import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;

/** Opens the window; a class apart, since the toolkit starts from a plain class path only so. */
public final class WorkbenchLauncher {
  private WorkbenchLauncher() {}

  /**
   * Opens the window and returns when it is closed.
   *
   * @param profile the printer to open; the demo printer with the practice board where empty
   */
  public static void open(Optional<Path> profile) {
    String[] arguments = profile.map(path -> new String[] {path.toString()}).orElse(new String[0]);
    WarmUp.begin();
    Workbench.prepare();
    Application.launch(Workbench.class, arguments);
  }
}
