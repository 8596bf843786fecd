package dev.gantrywright.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Opens the window; a class apart, since the toolkit starts from a plain class path only so. */
public final class WorkbenchLauncher {
  /** Held here, or its level could be collected with it. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private WorkbenchLauncher() {}

  /**
   * Opens the window and returns when it is closed.
   *
   * @param profile the printer to open; the demo printer with the practice board where empty
   */
  public static void open(Optional<Path> profile) {
    String[] arguments = profile.map(path -> new String[] {path.toString()}).orElse(new String[0]);
    // That it is started from a class path is as it should be; it warns of nothing else here.
    TOOLKIT.setLevel(Level.SEVERE);
    WarmUp.begin();
    Workbench.prepare();
    Application.launch(Workbench.class, arguments);
  }
}
