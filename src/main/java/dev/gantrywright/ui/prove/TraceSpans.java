package dev.gantrywright.ui.prove;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.TraceLook;
import dev.gantrywright.ui.theme.Choice;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** How much time the trace shows: a choice; one stop for the Tab key, Left and Right choose. */
final class TraceSpans extends HBox {
  private final TraceLook look;
  private final Map<Integer, ToggleButton> buttons = new LinkedHashMap<>();

  TraceSpans(TraceLook look) {
    this.look = look;
    for (int seconds : TraceLook.SPANS) {
      ToggleButton button = new ToggleButton(words(seconds));
      button.setId("trace-span-" + seconds);
      button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
      button.setAccessibleText(Texts.of("trace.span.words", words(seconds)));
      button.setOnAction(click -> choose(seconds));
      button.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
      buttons.put(seconds, button);
    }
    Choice choice = new Choice(buttons.values().toArray(ToggleButton[]::new));
    choice.setMaxWidth(Region.USE_PREF_SIZE);
    HBox.setHgrow(choice, Priority.SOMETIMES);
    getChildren().add(choice);
    show();
  }

  /** A span as it is said: in seconds, or in whole minutes. */
  static String words(int seconds) {
    return seconds < 60
        ? Texts.of("trace.span.seconds", seconds)
        : Texts.of("trace.span.minutes", seconds / 60);
  }

  private void choose(int seconds) {
    look.span(seconds, look.anchor());
    show();
  }

  private void keyed(KeyEvent key) {
    if (key.getCode() == KeyCode.RIGHT || key.getCode() == KeyCode.LEFT) {
      look.zoom(key.getCode() == KeyCode.RIGHT ? 1 : -1, look.anchor());
      buttons.get(look.span().get()).requestFocus();
      key.consume();
    }
  }

  /** Shows which is chosen. */
  void show() {
    buttons.forEach(
        (seconds, button) -> {
          boolean chosen = seconds.equals(look.span().get());
          button.setSelected(chosen);
          button.setFocusTraversable(chosen);
        });
  }
}
