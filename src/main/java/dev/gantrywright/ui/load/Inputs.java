package dev.gantrywright.ui.load;

import dev.gantrywright.ui.quantity.HomePath;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Labelled text fields of the Load stage. */
final class Inputs {
  private static final double WIDTH = 740;

  private Inputs() {}

  static TextField field(String id, String key) {
    TextField field = new TextField();
    field.setId(id);
    field.setAccessibleText(Texts.of(key));
    return field;
  }

  static HBox row(String key, TextField field, Node... more) {
    Label label = Pieces.label(Texts.of(key), "field-label");
    label.setMinWidth(110);
    label.setLabelFor(field);
    HBox box = new HBox(field);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    HBox row = Pieces.row(10, label, box);
    // With or without something beside its field a row ends where the others do.
    row.setMaxWidth(WIDTH);
    row.getChildren().addAll(more);
    return row;
  }

  /** The path in a field; empty where none stands there. */
  static Optional<Path> path(TextField field) {
    try {
      return field.getText().isBlank()
          ? Optional.empty()
          : Optional.of(HomePath.read(field.getText()));
    } catch (InvalidPathException unreadable) {
      return Optional.empty();
    }
  }

  /** Shows a part of the stage, or takes it out of the layout. */
  static void show(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }
}
