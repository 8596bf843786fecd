package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.Texts;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The last exchange on the serial line, at the foot of the window. */
public final class LineStrip extends HBox {
  private static final double NARROW = 1000;

  private final Label time = new Label();
  private final Label sent = new Label();
  private final Label received = new Label();
  private final Label figures = new Label();
  private final Button open = new Button(Texts.of("line.open"));

  public LineStrip(Runnable pull) {
    getStyleClass().add("strip");
    // In the mono face the points of a time or an address stand apart like words.
    time.getStyleClass().add("quiet");
    sent.getStyleClass().add("strong");
    received.getStyleClass().add("mono");
    figures.getStyleClass().addAll("quiet", "small");
    open.getStyleClass().add("plain");
    open.setId("line-open");
    open.setOnAction(click -> pull.run());
    HBox.setHgrow(received, Priority.ALWAYS);
    received.setMaxWidth(Double.MAX_VALUE);
    time.setMinWidth(Region.USE_PREF_SIZE);
    sent.setMinWidth(Region.USE_PREF_SIZE);
    figures.setMinWidth(Region.USE_PREF_SIZE);
    open.setMinWidth(Region.USE_PREF_SIZE);
    getChildren().addAll(open, time, sent, received, figures);
    quiet();
    widthProperty().addListener((o, before, now) -> fit(now.doubleValue() >= NARROW));
  }

  /** In a narrow window the answer needs the room of its time and rate. */
  private void fit(boolean wide) {
    for (Label each : new Label[] {time, figures}) {
      each.setVisible(wide);
      each.setManaged(wide);
    }
  }

  /** Says what its button does now. */
  void follow(ReadOnlyBooleanProperty pulled) {
    pulled.addListener(
        (o, before, now) -> open.setText(Texts.of(now ? "line.close" : "line.open")));
  }

  /** Nothing is connected. */
  public void quiet() {
    time.setText("");
    sent.setText("");
    received.setText(Texts.of("line.none"));
    received.getStyleClass().remove("mono");
    if (!received.getStyleClass().contains("quiet")) {
      received.getStyleClass().add("quiet");
    }
    figures.setText("");
  }

  public void show(String at, String command, String reply, String rate) {
    time.setText(at);
    sent.setText(command);
    received.setText(reply);
    received.getStyleClass().remove("quiet");
    if (!received.getStyleClass().contains("mono")) {
      received.getStyleClass().add("mono");
    }
    figures.setText(rate);
  }
}
