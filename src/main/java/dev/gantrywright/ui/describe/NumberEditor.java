package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.FieldType;
import dev.gantrywright.ui.quantity.Reading;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.quantity.TypedNumber;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import tools.jackson.databind.JsonNode;

/** A number with its unit in the field; takes any unit of the same kind. */
final class NumberEditor implements FieldEditor {
  private final HBox box = new HBox();
  private final TextField text = new TextField();
  private final String unit;
  private final boolean whole;
  private final TypedNumber typed;
  private final EditSink sink;
  private final Consumer<Optional<String>> unread;
  private Double shown;
  private boolean showing;

  NumberEditor(Field field, TypedNumber typed, EditSink sink, Consumer<Optional<String>> unread) {
    this.unit = field.unit() == null ? "" : field.unit();
    this.whole = field.type() == FieldType.INTEGER;
    this.typed = typed;
    this.sink = sink;
    this.unread = unread;
    text.getStyleClass().add("number");
    box.getStyleClass().add("field-box");
    HBox.setHgrow(text, Priority.ALWAYS);
    text.setMaxWidth(Double.MAX_VALUE);
    box.getChildren().add(text);
    String slash = unit.endsWith("/mm") ? "/mm" : unit;
    Label label = new Label(slash);
    label.getStyleClass().add("unit");
    label.setMinWidth(44);
    label.setMouseTransparent(true);
    box.getChildren().add(label);
    text.textProperty().addListener((o, before, now) -> typed(now));
    text.focusedProperty().addListener((o, before, now) -> settle(now));
    text.setOnAction(enter -> settle(false));
  }

  private void typed(String now) {
    if (showing) {
      return;
    }
    Reading reading = typed.read(now, unit, whole);
    if (reading instanceof Reading.Number number) {
      shown = number.value();
      Object value = whole ? (Object) (long) number.value() : (Object) number.value();
      unread.accept(sink.accept(value));
    } else if (reading instanceof Reading.Nothing) {
      shown = null;
      unread.accept(sink.accept(null));
    } else if (reading instanceof Reading.Unread why) {
      unread.accept(Optional.of(why.why()));
    }
  }

  /** Leaving the field, a typed unit gives way to the value in the field's own. */
  private void settle(boolean focused) {
    if (focused || !(typed.read(text.getText(), unit, whole) instanceof Reading.Number)) {
      return;
    }
    set(shown == null ? "" : Shown.grouped(shown));
  }

  private void set(String words) {
    if (!words.equals(text.getText())) {
      showing = true;
      text.setText(words);
      showing = false;
    }
  }

  @Override
  public void show(JsonNode value) {
    Double now = value == null || !value.isNumber() ? null : value.asDouble();
    Reading standing = typed.read(text.getText(), unit, whole);
    boolean same =
        now == null
            ? standing instanceof Reading.Nothing
            : standing instanceof Reading.Number number && number.value() == now;
    shown = now;
    if (!same) {
      set(now == null ? "" : Shown.grouped(now));
      unread.accept(Optional.empty());
    }
  }

  /** The text control, for a picker that completes what is typed. */
  TextField text() {
    return text;
  }

  @Override
  public Region box() {
    return box;
  }

  @Override
  public Node focus() {
    return text;
  }
}
