package dev.gantrywright.ui.prove;

import dev.gantrywright.app.ThermalStudy;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.ui.draw.Sketch;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

/** A heater's step response: process model and controller terms by published rules, plotted. */
final class HeaterPanel extends Section {
  private static final double WIDTH = 520;
  private static final double HEIGHT = 180;

  private final TextField file = new TextField();
  private final TextField power = new TextField("0.5");
  private final Label words = Pieces.paragraph("");
  private final Sketch plot = new Sketch();
  private final Pane room = new Pane(plot);
  private final GridPane terms = new GridPane();

  HeaterPanel() {
    super("heater.title", "heater.about");
    Button fit = Pieces.button("heater-fit", Texts.of("heater.fit"), "act-second", this::fit);
    file.setOnAction(enter -> fit());
    words.setId("heater-model");
    room.setMinSize(WIDTH, HEIGHT + 24);
    room.setMaxWidth(WIDTH);
    terms.setHgap(20);
    terms.setVgap(4);
    terms.setId("heater-terms");
    show(room, false);
    getChildren()
        .addAll(
            caution("prove.warning", "heater.caution"),
            Pieces.row(
                16,
                field(file, "heater-file", "heater.file", 26),
                field(power, "heater-power", "heater.power", 5),
                fit),
            words,
            new VBox(8, room, terms));
  }

  private void fit() {
    String path = file.getText().strip();
    String share = power.getText().strip().replace(',', '.');
    CompletableFuture.supplyAsync(() -> read(path, share))
        .thenAccept(found -> Platform.runLater(() -> tell(found)));
  }

  private record Found(StepResponse response, ThermalStudy study, String trouble) {}

  /** Off the window's thread. */
  private static Found read(String path, String share) {
    try {
      StepResponse response =
          StepResponse.ofCsv("", Double.parseDouble(share), Files.readString(Path.of(path)));
      return new Found(response, ThermalStudy.of(response), "");
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
    plot.clear();
    show(room, found.study() != null);
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
    draw(found.response(), study);
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

  private void draw(StepResponse response, ThermalStudy study) {
    List<StepResponse.Point> seen = response.points();
    double end = seen.get(seen.size() - 1).seconds();
    double low = seen.stream().mapToDouble(StepResponse.Point::celsius).min().orElse(0);
    double high = seen.stream().mapToDouble(StepResponse.Point::celsius).max().orElse(1);
    double span = Math.max(1, high - low);
    plot.line(0, HEIGHT, WIDTH, HEIGHT, "fine");
    plot.line(0, 0, 0, HEIGHT, "fine");
    plot.polyline("faint", line(seen, end, low, span));
    plot.polyline("live", line(study.fitted(), end, low, span));
    plot.text(Texts.of("heater.high", short3(high)), 6, 12, 0, "small");
    plot.text(Texts.of("heater.seconds", short3(end)), WIDTH - 4, HEIGHT + 16, 1, "small");
    room.setAccessibleText(Texts.of("heater.plot"));
  }

  private static double[] line(
      List<StepResponse.Point> points, double end, double low, double span) {
    double[] xy = new double[points.size() * 2];
    for (int i = 0; i < points.size(); i++) {
      xy[2 * i] = WIDTH * points.get(i).seconds() / Math.max(1, end);
      xy[2 * i + 1] = HEIGHT - HEIGHT * (points.get(i).celsius() - low) / span;
    }
    return xy;
  }
}
