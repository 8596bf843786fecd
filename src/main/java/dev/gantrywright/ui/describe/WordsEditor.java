package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.FieldType;
import dev.gantrywright.ui.state.WordList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.skin.TextAreaSkin;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tools.jackson.databind.JsonNode;

/** Text, a list of words, or {@code name=value} lines. */
final class WordsEditor implements FieldEditor {
  private final Region box;
  private final TextInputControl text;
  private final FieldType type;
  private final EditSink sink;
  private final Consumer<Optional<String>> unread;
  private boolean showing;

  WordsEditor(Field field, EditSink sink, Consumer<Optional<String>> unread) {
    this.type = field.type();
    this.sink = sink;
    this.unread = unread;
    boolean tall = type == FieldType.MAP || field.path().equals("notes");
    if (tall) {
      TextArea area = new TextArea();
      // Given its skin only by the style pass, the area kept black text in both themes.
      area.setSkin(new TextAreaSkin(area));
      area.setPrefRowCount(3);
      area.setWrapText(true);
      area.setMinHeight(64);
      area.setMaxHeight(64);
      VBox frame = new VBox(area);
      frame.getStyleClass().add("area-frame");
      text = area;
      box = frame;
    } else {
      TextField line = new TextField();
      HBox.setHgrow(line, Priority.ALWAYS);
      HBox frame = new HBox(line);
      frame.getStyleClass().add("field-box");
      text = line;
      box = frame;
    }
    text.textProperty().addListener((o, before, now) -> typed(now));
  }

  private void typed(String now) {
    if (!showing) {
      unread.accept(sink.accept(value(now)));
    }
  }

  private Object value(String typed) {
    if (typed.isBlank()) {
      return null;
    }
    return switch (type) {
      case LIST -> WordList.words(typed);
      case MAP -> WordList.map(typed);
      default -> typed;
    };
  }

  @Override
  public void show(JsonNode value) {
    if (java.util.Objects.equals(value(text.getText()), plain(value))) {
      return;
    }
    showing = true;
    text.setText(words(value));
    showing = false;
    unread.accept(Optional.empty());
  }

  private static Object plain(JsonNode value) {
    if (value == null) {
      return null;
    }
    if (value.isArray()) {
      return list(value);
    }
    return value.isObject() ? map(value) : value.asString();
  }

  private static String words(JsonNode value) {
    if (value == null) {
      return "";
    }
    if (value.isArray()) {
      return WordList.typed(list(value));
    }
    return value.isObject() ? WordList.typed(map(value)) : value.asString();
  }

  private static List<String> list(JsonNode value) {
    return value.valueStream().map(JsonNode::asString).toList();
  }

  private static Map<String, String> map(JsonNode value) {
    Map<String, String> map = new LinkedHashMap<>();
    value.properties().forEach(entry -> map.put(entry.getKey(), entry.getValue().asString()));
    return map;
  }

  @Override
  public Region box() {
    return box;
  }

  @Override
  public Node focus() {
    return text;
  }

  /** The text control, for a picker that completes what is typed. */
  TextInputControl text() {
    return text;
  }
}
