package dev.gantrywright.ui;

import java.util.List;

/**
 * Loads the classes that the first frame needs, beside the start of the toolkit, which leaves a
 * core idle. Nothing is initialised here: the toolkit does that in its own order.
 */
final class WarmUp {
  private static final List<String> CLASSES =
      List.of(
          "javafx.scene.control.skin.ButtonSkin",
          "javafx.scene.control.skin.CheckBoxSkin",
          "javafx.scene.control.skin.LabelSkin",
          "javafx.scene.control.skin.ScrollBarSkin",
          "javafx.scene.control.skin.ScrollPaneSkin",
          "javafx.scene.control.skin.TextFieldSkin",
          "javafx.scene.control.skin.TooltipSkin",
          "com.sun.javafx.scene.control.behavior.ButtonBehavior",
          "com.sun.javafx.scene.control.behavior.ScrollPaneBehavior",
          "com.sun.javafx.scene.control.behavior.TextFieldBehavior",
          "javafx.css.CssParser",
          "javafx.css.Stylesheet",
          "com.sun.javafx.css.StyleManager",
          "javafx.scene.CssStyleHelper",
          "javafx.scene.layout.GridPane",
          "javafx.scene.layout.HBox",
          "javafx.scene.layout.StackPane",
          "javafx.scene.layout.VBox",
          "javafx.scene.text.Font",
          "javafx.scene.transform.Scale",
          "tools.jackson.databind.json.JsonMapper",
          "dev.gantrywright.app.DemoWorkshop",
          "dev.gantrywright.ui.DeskView",
          "dev.gantrywright.ui.WindowActs",
          "dev.gantrywright.ui.WorkbenchWindow",
          "dev.gantrywright.ui.draw.SmallPlan",
          "dev.gantrywright.ui.shell.KeyMap",
          "dev.gantrywright.ui.shell.Palette",
          "dev.gantrywright.ui.shell.RulePage",
          "dev.gantrywright.ui.shell.ZoomPane",
          "dev.gantrywright.ui.start.StartView",
          "dev.gantrywright.ui.state.Habits",
          "dev.gantrywright.ui.state.Texts",
          "dev.gantrywright.ui.state.Workshop",
          "dev.gantrywright.ui.theme.Theme",
          "dev.gantrywright.ui.theme.Typefaces");

  private WarmUp() {}

  /** Begins, and does not wait. */
  static void begin() {
    Thread loader = new Thread(WarmUp::load, "classes");
    loader.setDaemon(true);
    loader.start();
  }

  /** How many members were looked at; the looking is what loads. */
  private static int load() {
    int members = 0;
    for (String name : CLASSES) {
      try {
        Class<?> loaded = Class.forName(name, false, WarmUp.class.getClassLoader());
        // Its signatures name what it works with: that is loaded with it.
        members += loaded.getDeclaredMethods().length + loaded.getDeclaredFields().length;
      } catch (ClassNotFoundException | LinkageError missing) {
        // Another version may do without it; it is loaded when it is needed, or not at all.
        continue;
      }
    }
    return members;
  }
}
