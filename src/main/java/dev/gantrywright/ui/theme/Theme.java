package dev.gantrywright.ui.theme;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;

/** Puts a mode on a scene: the library's controls below, our tones and shapes above. */
public final class Theme {
  private static final String SHEET = "/dev/gantrywright/ui/theme/workbench.css";

  private Theme() {}

  public static void apply(Scene scene, Mode mode) {
    String base =
        mode == Mode.DARK
            ? new PrimerDark().getUserAgentStylesheet()
            : new PrimerLight().getUserAgentStylesheet();
    if (!base.equals(Application.getUserAgentStylesheet())) {
      Application.setUserAgentStylesheet(base);
    }
    scene
        .getStylesheets()
        .setAll(Tones.of(mode).stylesheet(), Theme.class.getResource(SHEET).toExternalForm());
  }
}
