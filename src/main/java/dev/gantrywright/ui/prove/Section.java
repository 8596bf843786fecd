package dev.gantrywright.ui.prove;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A headed part of the Prove stage, and the pieces that its panels share. */
abstract class Section extends VBox {
  /** The least width of a field in which a value can still be read. */
  private static final double LEAST = 72;

  Section(String titleKey, String aboutKey) {
    super(8);
    setFillWidth(true);
    getChildren()
        .addAll(
            Pieces.label(Texts.of(titleKey), "section"),
            Pieces.paragraph(Texts.of(aboutKey), "quiet"));
  }

  final void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  /** The signal word and one sentence, where the hand is about to act. */
  static HBox caution(String wordKey, String textKey) {
    Label word = Pieces.label(Texts.of(wordKey), "caution-word");
    word.setMinWidth(Region.USE_PREF_SIZE);
    return Pieces.row(10, word, Pieces.paragraph(Texts.of(textKey), "small"));
  }

  /** Fields that stand side by side as far as there is room, whole. */
  static FlowPane fields(Node... fields) {
    FlowPane pane = new FlowPane(16, 8, fields);
    pane.setMinWidth(0);
    for (Node field : fields) {
      // A flow pane gives each its own width: none may be wider than the pane.
      ((Region) field).maxWidthProperty().bind(pane.widthProperty());
    }
    return pane;
  }

  /** A labelled field. */
  static HBox field(TextField field, String id, String labelKey, int columns) {
    field.setId(id);
    field.setAccessibleText(Texts.of(labelKey));
    field.setPrefColumnCount(columns);
    Label label = Pieces.label(Texts.of(labelKey), "field-label");
    label.setMinWidth(Region.USE_PREF_SIZE);
    label.setLabelFor(field);
    HBox box = new HBox(field);
    box.getStyleClass().add("field-box");
    box.setMinWidth(LEAST);
    HBox.setHgrow(field, Priority.ALWAYS);
    return Pieces.row(8, label, box);
  }
}
