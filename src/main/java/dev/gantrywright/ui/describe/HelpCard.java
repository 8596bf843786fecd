package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Field;
import dev.gantrywright.ui.state.Texts;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Help on the field that has the keyboard: what it is, how to find it, what can hurt. */
final class HelpCard extends VBox {
  /**
   * @param toMind what the catalogue says of the part that stands in the field
   */
  HelpCard(Field field, Optional<String> toMind) {
    getStyleClass().add("help-card");
    text(field.help(), "small");
    if (field.find() != null) {
      text(Texts.of("help.find", field.find()), "small", "quiet");
    }
    toMind.ifPresent(words -> text(words, "small"));
    if (field.caution() != null) {
      Label word = new Label(Texts.of("help.caution"));
      word.getStyleClass().add("caution-word");
      getChildren().add(word);
      text(field.caution(), "small");
    }
  }

  private void text(String words, String... styles) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    getChildren().add(label);
  }
}
