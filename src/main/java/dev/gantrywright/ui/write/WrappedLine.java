package dev.gantrywright.ui.write;

import javafx.scene.control.TextArea;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** One line of code that wraps to its width and is as high as that takes; read, marked, copied. */
final class WrappedLine extends TextArea {
  /** Of the type that code has, pixels. */
  private static final double SIZE = 12;

  /** Left and right of the words, border and padding as the style sheet has them, pixels. */
  private static final double BESIDE = 2 * (8 + 2);

  /** Above and below them, pixels. */
  private static final double AROUND = 2 * (2 + 2);

  private final Text measure = new Text();

  WrappedLine(String id) {
    setId(id);
    setEditable(false);
    setWrapText(true);
    setPrefColumnCount(1);
    setMinWidth(0);
    setMaxWidth(Double.MAX_VALUE);
    getStyleClass().addAll("wrapped-line", "mono", "code");
    measure.setFont(Font.font("B612 Mono Regular", SIZE));
    widthProperty().addListener((o, before, now) -> fit());
    fit();
  }

  void show(String line) {
    // As an editor shows it: what is copied out of it is the line itself.
    if (!line.equals(getText())) {
      setText(line);
      fit();
    }
  }

  private void fit() {
    measure.setText(getText().isEmpty() ? " " : getText());
    measure.setWrappingWidth(Math.max(SIZE, getWidth() - BESIDE));
    double height = Math.ceil(measure.getLayoutBounds().getHeight()) + AROUND;
    if (height != getPrefHeight()) {
      setPrefHeight(height);
      setMinHeight(height);
    }
  }
}
