package dev.gantrywright.ui.theme;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;

/**
 * A scroll pane as wide as its room that paints only what changes. The toolkit's own keeps an image
 * of all that it shows, and paints the whole of it anew for one letter in one field.
 */
public class SheetScroll extends ScrollPane {
  public SheetScroll() {
    this(null);
  }

  public SheetScroll(Node content) {
    super(content);
    getStyleClass().add("sheet-scroll");
    setFitToWidth(true);
    setFocusTraversable(false);
  }

  @Override
  protected Skin<?> createDefaultSkin() {
    Skin<?> skin = super.createDefaultSkin();
    for (Node child : getChildren()) {
      if (child.getStyleClass().contains("viewport")) {
        child.setCache(false);
      }
    }
    return skin;
  }
}
