package dev.gantrywright.ui.names;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.names.Meaning;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Lets the user say what a value means in this folder: which way round, or in which unit. */
final class MeaningChoice {
  private static final List<Meaning> ENDSTOP =
      List.of(
          Meaning.INVERTED,
          Meaning.NOT_INVERTED,
          Meaning.ACTIVE_LOW,
          Meaning.ACTIVE_HIGH,
          Meaning.ACTIVE_LEVEL,
          Meaning.IDLE_LEVEL,
          Meaning.NORMALLY_CLOSED,
          Meaning.NORMALLY_OPEN,
          Meaning.CONTACT,
          Meaning.UNKNOWN);
  private static final List<Meaning> DIRECTION =
      List.of(Meaning.INVERTED, Meaning.NOT_INVERTED, Meaning.SIGN, Meaning.UNKNOWN);

  private MeaningChoice() {}

  /** The controls for a row; none where its value can mean one thing only. */
  static List<Node> of(NameRow row, NamesDesk desk) {
    NameEntry entry = row.entry();
    String last = row.path().substring(row.path().lastIndexOf('.') + 1);
    boolean turns = last.equals("inverted") || last.equals("directionInverted");
    if (turns && !entry.values().isEmpty()) {
      return List.of(constants(row, desk));
    }
    if (turns) {
      List<String> words = new ArrayList<>();
      for (Meaning meaning : last.equals("inverted") ? ENDSTOP : DIRECTION) {
        words.add(meaning.word());
      }
      String now = Meaning.of(entry.meaning()).orElse(Meaning.INVERTED).word();
      return List.of(
          choice(row, words, now, word -> desk.settle(row.path(), entry.meaning(word, Map.of()))));
    }
    String unit = Fields.at(row.path()).map(Field::unit).orElse("");
    List<String> units =
        switch (unit == null ? "" : unit) {
          case "A" -> List.of("A", "mA");
          case "mm/s" -> List.of("mm/s", "mm/min");
          default -> List.of();
        };
    String now = entry.unit() == null ? unit : entry.unit();
    return units.isEmpty() || !units.contains(now)
        ? List.of()
        : List.of(
            choice(
                row,
                units,
                now,
                word ->
                    desk.settle(
                        row.path(),
                        entry
                            .meaning(word, entry.values())
                            .unit(word.equals(unit) ? null : word))));
  }

  private interface Taking {
    void take(String word);
  }

  private static Node choice(NameRow row, List<String> words, String now, Taking taking) {
    ComboBox<String> box = new ComboBox<>(FXCollections.observableArrayList(words));
    box.setId("names-meaning");
    box.setValue(now);
    box.setMaxWidth(Double.MAX_VALUE);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(String word) {
            return word == null ? "" : Texts.orElse("names.means." + word, word);
          }

          @Override
          public String fromString(String text) {
            return text;
          }
        });
    box.setAccessibleText(Texts.of("names.meaning") + ": " + row.label());
    box.setOnAction(
        chosen -> {
          if (!now.equals(box.getValue())) {
            taking.take(box.getValue());
          }
        });
    return new VBox(4, Pieces.label(Texts.of("names.meaning"), "strong"), box);
  }

  /** Two constants: which stands for yes, and the other way round. */
  private static Node constants(NameRow row, NamesDesk desk) {
    Map<String, String> values = row.entry().values();
    String yes = values.getOrDefault("true", "?");
    String no = values.getOrDefault("false", "?");
    Button swap =
        Pieces.button(
            "names-swap",
            Texts.of("names.swap"),
            "act-second",
            () -> {
              Map<String, String> swapped = new LinkedHashMap<>();
              swapped.put("true", no);
              swapped.put("false", yes);
              swapped.values().removeIf("?"::equals);
              desk.settle(row.path(), row.entry().meaning(row.entry().meaning(), swapped));
            });
    swap.setAccessibleText(Texts.of("names.swap") + ": " + row.label());
    return new VBox(
        4,
        Pieces.label(Texts.of("names.meaning"), "strong"),
        Pieces.paragraph(Texts.of("names.constants", yes, no)),
        swap);
  }
}
