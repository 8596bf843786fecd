package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.FieldType;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Choice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import tools.jackson.databind.JsonNode;

/** One of a few: the choices stand side by side; arrow keys move, Delete takes the value away. */
final class ChoiceEditor implements FieldEditor {
  private final Choice box;
  private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();
  private final EditSink sink;
  private final boolean flag;

  ChoiceEditor(Field field, EditSink sink) {
    this.sink = sink;
    this.flag = field.type() == FieldType.FLAG;
    List<String> choices = flag ? List.of("false", "true") : field.choices();
    for (String choice : choices) {
      ToggleButton button = new ToggleButton(word(choice));
      button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
      button.setAccessibleText(field.label() + ": " + word(choice));
      button.setFocusTraversable(false);
      button.setOnAction(click -> choose(choice));
      button.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
      buttons.put(choice, button);
    }
    box = new Choice(buttons.values().toArray(ToggleButton[]::new));
    box.setMaxWidth(Region.USE_PREF_SIZE);
    reachable(choices.get(0));
  }

  private String word(String choice) {
    if (flag) {
      return Texts.of(choice.equals("true") ? "value.yes" : "value.no");
    }
    return Texts.orElse("choice." + choice, choice);
  }

  private void keyed(KeyEvent key) {
    List<String> choices = List.copyOf(buttons.keySet());
    int at = choices.indexOf(chosen(choices));
    if (key.getCode() == KeyCode.RIGHT || key.getCode() == KeyCode.LEFT) {
      int step = key.getCode() == KeyCode.RIGHT ? 1 : -1;
      String next = choices.get(Math.floorMod(at + step, choices.size()));
      choose(next);
      buttons.get(next).requestFocus();
      key.consume();
    } else if (key.getCode() == KeyCode.DELETE || key.getCode() == KeyCode.BACK_SPACE) {
      sink.accept(null);
      key.consume();
    }
  }

  private String chosen(List<String> choices) {
    return choices.stream().filter(c -> buttons.get(c).isFocused()).findFirst().orElse("");
  }

  private void choose(String choice) {
    // The document decides what is chosen; a refused choice springs back.
    buttons.forEach((name, button) -> button.setSelected(name.equals(choice)));
    sink.accept(flag ? (Object) Boolean.valueOf(choice) : choice);
  }

  /** One stop for the Tab key: the chosen one, else the first. */
  private void reachable(String choice) {
    buttons.forEach((name, button) -> button.setFocusTraversable(name.equals(choice)));
  }

  @Override
  public void show(JsonNode value) {
    String choice = value == null ? "" : value.asString();
    buttons.forEach((name, button) -> button.setSelected(name.equals(choice)));
    reachable(buttons.containsKey(choice) ? choice : buttons.keySet().iterator().next());
  }

  @Override
  public Region box() {
    return box;
  }

  @Override
  public Node focus() {
    return buttons.values().stream()
        .filter(ToggleButton::isFocusTraversable)
        .findFirst()
        .orElseThrow();
  }
}
