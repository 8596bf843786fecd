package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.Texts;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Which printer, which board, what is connected; undo, redo, and the stop button in its corner. */
public final class HeaderBar extends HBox {
  private static final double NARROW = 860;

  private final Label name = new Label();
  private final Label about = new Label();
  private final Label link = new Label();
  private final Label said = new Label();
  private final Button undo = button("undo");
  private final Button redo = button("redo");
  private final Button stop = new Button(Texts.of("stop.button"));

  /** What the header's buttons do. */
  public interface Acts {
    void printers();

    void undo();

    void redo();

    void find();

    void keys();

    void stop();
  }

  public HeaderBar(Acts acts) {
    getStyleClass().add("head");
    name.getStyleClass().add("title");
    // Long names give way, the words beside the name first; the tools and Stop never do.
    name.setMinWidth(0);
    about.setMinWidth(0);
    said.setMinWidth(0);
    about.getStyleClass().add("quiet");
    link.getStyleClass().add("quiet");
    link.setMinWidth(Region.USE_PREF_SIZE);
    said.getStyleClass().addAll("quiet", "small");
    stop.getStyleClass().add("stop");
    stop.setId("stop");
    stop.setMinWidth(Region.USE_PREF_SIZE);
    stop.setAccessibleText(Texts.of("stop.words"));
    Button printers = button("printers");
    Button find = button("find");
    Button keys = button("keys");
    printers.setOnAction(click -> acts.printers());
    undo.setOnAction(click -> acts.undo());
    redo.setOnAction(click -> acts.redo());
    find.setOnAction(click -> acts.find());
    keys.setOnAction(click -> acts.keys());
    stop.setOnAction(click -> acts.stop());
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox tools = new HBox(2, printers, undo, redo, find, keys);
    tools.setMinWidth(Region.USE_PREF_SIZE);
    tools.setAlignment(javafx.geometry.Pos.CENTER);
    getChildren().addAll(name, about, said, gap, tools, link, stop);
    setMinWidth(0);
    widthProperty().addListener((o, before, now) -> fit(now.doubleValue(), printers));
    undo(Optional.empty());
    redo(Optional.empty());
    connected(false, Texts.of("link.none"));
  }

  /** In a narrow window the keys serve where the words no longer fit. */
  private void fit(double width, Button printers) {
    boolean wide = width >= NARROW;
    for (javafx.scene.Node node :
        new javafx.scene.Node[] {about, said, printers, undo, redo, link}) {
      node.setVisible(wide);
      node.setManaged(wide);
    }
  }

  private static Button button(String key) {
    Button button = new Button(Texts.of("head." + key));
    button.getStyleClass().add("plain");
    button.setId("head-" + key);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setTooltip(new Tooltip(Texts.of("head." + key + ".tip")));
    return button;
  }

  public void printer(String printer, String what) {
    name.setText(printer);
    about.setText(what);
    name.setTooltip(new Tooltip(what.isEmpty() ? printer : printer + "\n" + what));
  }

  /** Says something in passing, such as that the profile is saved. */
  public void say(String words) {
    said.setText(words);
  }

  public void undo(Optional<String> label) {
    name(undo, "undo", label);
  }

  public void redo(Optional<String> label) {
    name(redo, "redo", label);
  }

  private static void name(Button button, String key, Optional<String> label) {
    button.setDisable(label.isEmpty());
    String words =
        label
            .map(l -> Texts.of("head." + key + ".named", l))
            .orElse(Texts.of("head." + key + ".tip"));
    button.getTooltip().setText(words);
    button.setAccessibleText(words);
  }

  /** The stop button stands in the same corner as long as something is connected. */
  public void connected(boolean up, String words) {
    link.setText(words);
    stop.setVisible(up);
    stop.setManaged(up);
  }
}
