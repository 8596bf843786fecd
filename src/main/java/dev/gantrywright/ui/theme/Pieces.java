package dev.gantrywright.ui.theme;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Labels, buttons and gaps in the window's type. */
public final class Pieces {
  private Pieces() {}

  public static Label label(String words, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    if (List.of(styles).contains("title")) {
      // Where room is short, what stands beside a title gives way.
      label.setMinWidth(Region.USE_PREF_SIZE);
    }
    return label;
  }

  /** A label that breaks its lines rather than cutting its words. */
  public static Label paragraph(String words, String... styles) {
    Label label = label(words, styles);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  /** A button that keeps its words whole. */
  public static Button button(String id, String words, String style, Runnable act) {
    Button button = new Button(words);
    button.setMnemonicParsing(false);
    button.setId(id);
    button.getStyleClass().add(style);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(click -> act.run());
    return button;
  }

  /** Gives or takes a style; one set anew would cost a style pass of everything inside the node. */
  public static void style(Node node, String style, boolean on) {
    boolean has = node.getStyleClass().contains(style);
    if (on && !has) {
      node.getStyleClass().add(style);
    } else if (!on && has) {
      node.getStyleClass().remove(style);
    }
  }

  /** Pushes what follows to the right. */
  public static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  /** A title with what it is about; where the room is short, that takes more lines. */
  public static HBox heading(Label title, Label about, Node... more) {
    title.setMinWidth(Region.USE_PREF_SIZE);
    about.setWrapText(true);
    about.setMinHeight(Region.USE_PREF_SIZE);
    HBox heading = new HBox(20, title, about);
    heading.getChildren().addAll(more);
    heading.setAlignment(more.length == 0 ? Pos.BASELINE_LEFT : Pos.CENTER_LEFT);
    return heading;
  }

  public static HBox row(double spacing, Node... nodes) {
    HBox row = new HBox(spacing, nodes);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }
}
