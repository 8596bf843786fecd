package dev.gantrywright.ui.theme;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.net.URL;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;

/** Puts a mode on a scene: the library's controls below, our tones and shapes above. */
public final class Theme {
  static final String SHEET = "/dev/gantrywright/ui/theme/workbench.css";

  private Theme() {}

  /**
   * Takes the library's controls of a mode. Before the first control is made this spares the
   * toolkit its own, which it would else read first.
   */
  public static void controls(Mode mode) {
    String base =
        mode == Mode.DARK
            ? new PrimerDark().getUserAgentStylesheet()
            : new PrimerLight().getUserAgentStylesheet();
    if (!base.equals(Application.getUserAgentStylesheet())) {
      Application.setUserAgentStylesheet(base);
    }
  }

  public static void apply(Scene scene, Mode mode) {
    controls(mode);
    scene.getStylesheets().setAll(sheets(mode));
  }

  /** Our sheet of a mode as the build compiled it; the text where it did not, as in an editor. */
  static List<String> sheets(Mode mode) {
    URL compiled = Theme.class.getResource(BinarySheets.name(mode));
    return compiled != null
        ? List.of(compiled.toExternalForm())
        : List.of(Tones.of(mode).stylesheet(), Theme.class.getResource(SHEET).toExternalForm());
  }
}
