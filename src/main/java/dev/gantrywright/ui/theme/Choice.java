package dev.gantrywright.ui.theme;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** One of a few, side by side on one ground; where the room is short they take two lines. */
public final class Choice extends FlowPane {
  private static final double GAP = 2;

  /**
   * @param buttons each is shown whole
   */
  public Choice(ToggleButton... buttons) {
    super(GAP, GAP, buttons);
    getStyleClass().add("choice");
    for (ToggleButton each : buttons) {
      each.setMinWidth(Region.USE_PREF_SIZE);
    }
  }

  /** As wide as all of them in one line; a flow pane asks for a wrapping length instead. */
  @Override
  protected double computePrefWidth(double height) {
    Insets edge = getInsets();
    double wide = edge.getLeft() + edge.getRight() + 1;
    for (Node each : getManagedChildren()) {
      wide += snapSizeX(each.prefWidth(-1)) + GAP;
    }
    return wide - GAP;
  }
}
