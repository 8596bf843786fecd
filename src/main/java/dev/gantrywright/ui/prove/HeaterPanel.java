package dev.gantrywright.ui.prove;

import dev.gantrywright.app.ThermalStudy;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.ui.draw.Shrunk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/**
 * A heater's step response, recorded here or read from a file: process model and controller terms
 * by published rules, plotted.
 */
final class HeaterPanel extends Section {
  private final TextField file = new TextField();
  private final TextField power = new TextField("0.5");
  private final Label words = Pieces.paragraph("");
  private final HeaterPlot plot = new HeaterPlot();
  private final GridPane terms = new GridPane();
  private final HeaterRun run;

  HeaterPanel(PrinterDesk desk) {
    super("heater.title", "heater.about");
    run = new HeaterRun(desk, this::growing, this::recorded);
    Button fit = Pieces.button("heater-fit", Texts.of("heater.fit"), "act-second", this::fit);
    file.setOnAction(enter -> fit());
    words.setId("heater-model");
    plot.setId("heater-picture");
    terms.setHgap(20);
    terms.setVgap(4);
    terms.setId("heater-terms");
    show(plot, false);
    getChildren()
        .addAll(
            run,
            Pieces.label(Texts.of("heater.fromFile"), "strong"),
            fields(
                field(file, "heater-file", "heater.file", 18),
                field(power, "heater-power", "heater.power", 5),
                fit),
            words,
            new VBox(8, new Shrunk(plot, HeaterPlot.WHOLE), terms));
  }

  /** The line came, went, or was armed. */
  void standing() {
    run.standing();
  }

  private void growing(List<StepResponse.Point> points, double limit) {
    terms.getChildren().clear();
    words.setText("");
    show(plot, true);
    plot.show(points, Optional.empty(), limit);
  }

  /** A run is over; its readings are in a file. */
  private void recorded(StepResponse response, Path kept) {
    file.setText(kept.toString());
    power.setText(String.valueOf(response.powerStep()));
    study(() -> found(response));
  }

  private void fit() {
    String path = file.getText().strip();
    String share = power.getText().strip().replace(',', '.');
    study(() -> read(path, share));
  }

  private interface Finding {
    Found find();
  }

  private void study(Finding finding) {
    CompletableFuture.supplyAsync(finding::find)
        .thenAccept(found -> Platform.runLater(() -> tell(found)));
  }

  private record Found(StepResponse response, ThermalStudy study, String trouble) {}

  private static Found found(StepResponse response) {
    try {
      return new Found(response, ThermalStudy.of(response), "");
    } catch (IllegalArgumentException e) {
      return new Found(response, null, e.getMessage());
    }
  }

  /** Off the window's thread. */
  private static Found read(String path, String share) {
    try {
      return found(
          StepResponse.ofCsv("", Double.parseDouble(share), Files.readString(Path.of(path))));
    } catch (NumberFormatException e) {
      return new Found(null, null, Texts.of("heater.noPower"));
    } catch (IOException | InvalidPathException e) {
      return new Found(null, null, Texts.of("heater.noFile", path));
    } catch (IllegalArgumentException e) {
      return new Found(null, null, e.getMessage());
    }
  }

  private void tell(Found found) {
    terms.getChildren().clear();
    show(plot, found.response() != null);
    if (found.response() != null) {
      plot.show(found.response().points(), Optional.ofNullable(found.study()), 0);
    }
    if (found.study() == null) {
      words.setText(found.trouble());
      return;
    }
    ThermalStudy study = found.study();
    String model =
        Texts.of(
            "heater.model",
            short3(study.model().gain()),
            short3(study.model().tauSeconds()),
            short3(study.model().deadSeconds()),
            short3(study.worstKelvin()));
    words.setText(found.response().settled() ? model : model + " " + Texts.of("heater.unsettled"));
    List<String> heads = List.of("heater.rule", "heater.kp", "heater.ki", "heater.kd");
    for (int column = 0; column < heads.size(); column++) {
      terms.add(Pieces.label(Texts.of(heads.get(column)), "quiet", "small"), column, 0);
    }
    int[] row = {1};
    study
        .rules()
        .forEach(
            (rule, gains) ->
                terms.addRow(
                    row[0]++,
                    Pieces.label(rule),
                    Pieces.label(short3(gains.kc()), "strong"),
                    Pieces.label(short3(gains.ki()), "strong"),
                    Pieces.label(short3(gains.kd()), "strong")));
  }

  private static String short3(double value) {
    return Double.isInfinite(value) ? "–" : String.format(Locale.ROOT, "%.4g", value);
  }
}
