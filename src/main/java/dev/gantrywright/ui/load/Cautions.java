package dev.gantrywright.ui.load;

import dev.gantrywright.load.Caution;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Cautions as they stand above the button that they speak of: signal word and sentence. */
final class Cautions extends VBox {
  private static final double WORD = 84;

  Cautions() {
    super(12);
  }

  void show(List<Caution> cautions) {
    getChildren().clear();
    for (Caution caution : cautions) {
      Label word = Pieces.label(caution.signal(), "caution-word");
      word.setMinWidth(WORD);
      word.setAlignment(Pos.CENTER);
      HBox row =
          Pieces.row(
              10,
              word,
              Pieces.paragraph(
                  (caution.hazard() + " " + caution.avoid() + " " + caution.who()).strip(),
                  "caution-text"));
      getChildren().add(row);
    }
  }
}
