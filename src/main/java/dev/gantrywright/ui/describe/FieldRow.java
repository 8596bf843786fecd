package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.FieldType;
import dev.gantrywright.ui.quantity.TypedNumber;
import dev.gantrywright.ui.state.Derivations;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.ProfileDesk;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import tools.jackson.databind.JsonNode;

/** One field of the profile: label, control with unit, and what follows from the value. */
final class FieldRow extends HBox {
  private static final double LABEL = 136;
  private static final double BOX = 176;

  private final String path;
  private final Field field;
  private final FieldEditor editor;
  private final Label beside = new Label();
  private final ProfileDesk desk;
  private final KnownHeights heights = new KnownHeights();
  private Optional<String> unread = Optional.empty();
  private Optional<JsonNode> shown;

  FieldRow(
      String path, Field field, ProfileDesk desk, TypedNumber typed, List<PickerChoice> picks) {
    this.path = path;
    this.field = field;
    this.desk = desk;
    setAlignment(Pos.CENTER_LEFT);
    setSpacing(12);
    setUserData(path);
    Label label = new Label(field.label());
    label.getStyleClass().add("field-label");
    label.setMinWidth(LABEL);
    label.setPrefWidth(LABEL);
    editor = editor(typed, picks);
    label.setLabelFor(editor.focus());
    boolean wide =
        field.type() == FieldType.LIST
            || field.type() == FieldType.MAP
            || field.type() == FieldType.TEXT && picks.isEmpty() && !field.path().contains("*");
    if (!(editor instanceof ChoiceEditor)) {
      editor.box().setMinWidth(wide ? 200 : BOX);
      editor.box().setPrefWidth(wide ? 360 : BOX);
    }
    beside.getStyleClass().addAll("derived", "quiet");
    beside.setWrapText(true);
    beside.setMinWidth(40);
    beside.setVisible(false);
    beside.setManaged(false);
    HBox.setHgrow(beside, Priority.ALWAYS);
    getChildren().addAll(label, editor.box(), beside);
    describe();
    show();
  }

  @Override
  public void requestLayout() {
    // Called by the constructor above this one, too.
    if (heights != null) {
      heights.forget();
    }
    super.requestLayout();
  }

  @Override
  protected double computeMinHeight(double width) {
    return heights.least(width, super::computeMinHeight);
  }

  @Override
  protected double computePrefHeight(double width) {
    return heights.preferred(width, super::computePrefHeight);
  }

  private FieldEditor editor(TypedNumber typed, List<PickerChoice> picks) {
    EditSink sink = value -> desk.edit(path, value);
    return switch (field.type()) {
      case NUMBER, INTEGER -> {
        NumberEditor number = new NumberEditor(field, typed, sink, this::unread);
        if (!picks.isEmpty()) {
          new PickerPopup(number.text(), picks);
        }
        yield number;
      }
      case FLAG, CHOICE -> new ChoiceEditor(field, sink);
      default -> {
        WordsEditor words = new WordsEditor(field, sink, this::unread);
        if (!picks.isEmpty()) {
          new PickerPopup(words.text(), picks);
        }
        yield words;
      }
    };
  }

  private void describe() {
    String unit = field.unit() == null ? "" : ", " + field.unit();
    editor.focus().setAccessibleText(field.label() + unit);
    editor.focus().setAccessibleHelp(field.help());
    editor.box().setId("field-" + path.replace('.', '-'));
    editor.focus().setId("edit-" + path.replace('.', '-'));
  }

  private void unread(Optional<String> why) {
    unread = why;
    editor.box().pseudoClassStateChanged(PseudoClass.getPseudoClass("unread"), why.isPresent());
    besideField();
  }

  /** Takes the value from the document. */
  void show() {
    Optional<JsonNode> now = desk.value(path);
    // Nothing to read anew where neither the value nor what is typed has changed.
    if (unread.isPresent() || editor instanceof ChoiceEditor || !now.equals(shown)) {
      shown = now;
      editor.show(now.orElse(null));
    }
    besideField();
  }

  private void besideField() {
    String words = unread.orElseGet(() -> Derivations.beside(desk.profile(), path).orElse(""));
    if (!words.equals(beside.getText())) {
      beside.setText(words);
      beside.setVisible(!words.isEmpty());
      beside.setManaged(!words.isEmpty());
    }
    Pieces.style(beside, "error-text", unread.isPresent());
    Pieces.style(beside, "quiet", unread.isEmpty());
  }

  /** The gravest finding on this field, or null. */
  void mark(Gravity gravity) {
    for (Gravity each : Gravity.values()) {
      editor
          .box()
          .pseudoClassStateChanged(PseudoClass.getPseudoClass(each.word()), each == gravity);
    }
  }

  String path() {
    return path;
  }

  /** Where the row's last visible thing ends, from its own left. */
  double contentRight() {
    if (beside.getText().isEmpty()) {
      return editor.box().getBoundsInParent().getMaxX();
    }
    double text = beside.prefWidth(-1);
    return beside.getBoundsInParent().getMinX() + Math.min(text, beside.getWidth());
  }

  Field field() {
    return field;
  }

  Region box() {
    return editor.box();
  }

  void takeFocus() {
    editor.focus().requestFocus();
  }

  FieldEditor editor() {
    return editor;
  }
}
