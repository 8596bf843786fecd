package dev.gantrywright.ui.prove;

import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.prove.RestCheck;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Reported endstop names that are not surely known: asked once each, kept in the profile. */
final class NamesPanel extends Section {
  private final PrinterDesk desk;
  private final VBox rows = new VBox(6);

  NamesPanel(PrinterDesk desk) {
    super("ends.title", "ends.about");
    this.desk = desk;
    getChildren().add(rows);
    show(this, false);
  }

  void proof(Optional<ProofReport> report) {
    rows.getChildren().clear();
    report.map(ProofReport::checks).orElse(List.of()).stream()
        .filter(check -> check.verdict() == Check.Verdict.UNSURE)
        .forEach(check -> RestCheck.reported(check).ifPresent(name -> ask(name, check.path())));
    show(this, !rows.getChildren().isEmpty());
  }

  private void ask(String reported, String path) {
    ComboBox<String> choice = new ComboBox<>();
    choice.getItems().setAll(desk.profile().endstops().keySet());
    choice.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(String end) {
            return end == null ? "" : PlaceNames.endstop(end);
          }

          @Override
          public String fromString(String words) {
            return words;
          }
        });
    int at = rows.getChildren().size();
    choice.setId("end-choice-" + at);
    choice.setAccessibleText(Texts.of("ends.which", reported));
    String guess = path.startsWith("endstops.") ? path.substring("endstops.".length()) : "";
    if (desk.profile().endstops().containsKey(guess)) {
      choice.setValue(guess);
    }
    Button keep =
        Pieces.button(
            "end-keep-" + at,
            Texts.of("ends.keep"),
            "act-second",
            () -> keep(reported, choice.getValue()));
    keep.disableProperty().bind(choice.valueProperty().isNull());
    HBox row = Pieces.row(10, Pieces.label(Texts.of("ends.which", reported)), choice, keep);
    rows.getChildren().add(row);
  }

  private void keep(String reported, String end) {
    Map<String, String> names = new LinkedHashMap<>(desk.profile().link().endstopNames());
    names.put(reported, end);
    Optional<String> refused = desk.values().edit("link.endstopNames", names);
    if (refused.isPresent()) {
      desk.link().said().set(refused.get());
    } else {
      // The watch reads names as the line was opened with them.
      desk.link().reconnect(desk.profile());
    }
  }
}
