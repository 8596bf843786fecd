package dev.gantrywright.ui.draw;

import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Words of a drawing that people have written themselves, cut to the room that they have. */
final class FittedWords {
  private static final double SIZE = 12;

  private FittedWords() {}

  /**
   * The words, or as many of their first letters as have room, and an ellipsis.
   *
   * @param room pixels, in the type of drawings
   * @param strong whether they are set bold
   */
  static String of(String words, double room, boolean strong) {
    Text probe = new Text(words);
    probe.setFont(Font.font(strong ? "B612 Bold" : "B612 Regular", SIZE));
    int kept = words.length();
    while (kept > 1 && probe.getLayoutBounds().getWidth() > room) {
      kept--;
      probe.setText(words.substring(0, kept).strip() + "…");
    }
    return probe.getText();
  }
}
