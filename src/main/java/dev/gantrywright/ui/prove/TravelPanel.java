package dev.gantrywright.ui.prove;

import dev.gantrywright.app.TravelStudy;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.physics.OutOfDomain;
import dev.gantrywright.prove.TravelRuns;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.DriveFigures;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Steps/mm of an axis or extruder from commanded and measured travels. */
final class TravelPanel extends Section {
  /** More digits than any machine can hold; the value goes into headers as it stands. */
  private static final int DECIMALS = 4;

  private final PrinterDesk desk;
  private final ComboBox<String> axis = new ComboBox<>();
  private final TextField commanded = new TextField("100");
  private final TextField error = new TextField("0.05");
  private final TextField measured = new TextField();
  private final FlowPane runs = new FlowPane(8, 8);
  private final VBox result = new VBox(4);
  private final Button take;
  private List<Double> values = List.of();
  private Optional<TravelStudy> study = Optional.empty();

  TravelPanel(PrinterDesk desk) {
    super("travel.title", "travel.about");
    this.desk = desk;
    axis.setId("travel-axis");
    axis.setAccessibleText(Texts.of("travel.axis"));
    axis.valueProperty().addListener((o, before, now) -> begin());
    Label which = Pieces.label(Texts.of("travel.axis"), "field-label");
    which.setLabelFor(axis);
    measured.setOnAction(enter -> add());
    commanded.textProperty().addListener((o, before, now) -> work());
    error.textProperty().addListener((o, before, now) -> work());
    Button add = Pieces.button("travel-add", Texts.of("travel.add"), "act-second", this::add);
    take = Pieces.button("travel-take", Texts.of("travel.take", "", ""), "act", this::take);
    result.setId("travel-result");
    getChildren()
        .addAll(
            caution("help.caution", "travel.caution"),
            fields(
                Pieces.row(8, which, axis),
                field(commanded, "travel-commanded", "travel.commanded", 6),
                field(error, "travel-error", "travel.error", 5)),
            fields(field(measured, "travel-measured", "travel.measured", 6), add),
            runs,
            result,
            Pieces.row(12, take));
    profile();
  }

  /** The profile changed: its axes, or the values that are compared with. */
  void profile() {
    List<String> names = List.copyOf(desk.profile().axes().keySet());
    if (!names.equals(axis.getItems())) {
      axis.getItems().setAll(names);
      axis.setValue(names.isEmpty() ? null : names.get(0));
    }
    work();
  }

  private void begin() {
    values = List.of();
    work();
  }

  private void add() {
    Optional<Double> mm = number(measured);
    if (mm.isPresent()) {
      List<Double> more = new ArrayList<>(values);
      more.add(mm.get());
      values = List.copyOf(more);
      measured.clear();
    }
    work();
  }

  private void remove(int run) {
    List<Double> fewer = new ArrayList<>(values);
    fewer.remove(run);
    values = List.copyOf(fewer);
    work();
  }

  private static Optional<Double> number(TextField field) {
    String text = field.getText().toLowerCase(Locale.ROOT).replace("mm", "").strip();
    try {
      return Optional.of(Double.parseDouble(text.replace(',', '.')));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private Optional<Axis> chosen() {
    return Optional.ofNullable(axis.getValue()).map(name -> desk.profile().axes().get(name));
  }

  private void work() {
    runs.getChildren().clear();
    for (int i = 0; i < values.size(); i++) {
      int run = i;
      String words = Texts.of("travel.run", i + 1, Shown.number(values.get(i)));
      Button chip = Pieces.button("travel-run-" + (i + 1), words, "act-second", () -> remove(run));
      chip.setAccessibleText(Texts.of("travel.run.words", i + 1, Shown.number(values.get(i))));
      runs.getChildren().add(chip);
    }
    result.getChildren().clear();
    study = Optional.empty();
    String trouble = study();
    if (!trouble.isEmpty()) {
      result.getChildren().add(Pieces.paragraph(trouble, "quiet"));
    }
    study.ifPresent(this::tell);
    show(take, study.isPresent());
  }

  /** Works out the study; one line where it cannot be. */
  private String study() {
    Optional<Axis> at = chosen();
    Optional<Double> length = number(commanded);
    Optional<Double> reading = number(error);
    if (at.isEmpty() || at.get().stepsPerMm() == null) {
      return Texts.of("travel.noSteps");
    }
    if (length.isEmpty() || reading.isEmpty()) {
      return Texts.of("travel.noNumber");
    }
    if (values.isEmpty()) {
      return Texts.of("travel.noRun");
    }
    try {
      TravelRuns measuredRuns =
          new TravelRuns(axis.getValue(), length.get(), values, reading.get());
      double computed = DriveFigures.stepsPerMm(at.get()).orElse(0.0);
      study = Optional.of(TravelStudy.of(measuredRuns, at.get().stepsPerMm(), computed));
      return "";
    } catch (OutOfDomain refused) {
      return refused.getMessage();
    }
  }

  private void tell(TravelStudy found) {
    double current = chosen().orElseThrow().stepsPerMm();
    Label value =
        Pieces.label(
            Texts.of(
                "travel.value",
                Shown.number(rounded(found.calibration().stepsPerMm())),
                Shown.number(rounded(found.calibration().plusMinus())),
                Shown.number(rounded(found.calibration().changePercent(current)))),
            "strong");
    value.setId("travel-value");
    result.getChildren().add(value);
    DriveFigures.stepsPerMm(chosen().orElseThrow())
        .ifPresent(
            computed ->
                result
                    .getChildren()
                    .add(
                        Pieces.paragraph(
                            Texts.of(
                                "travel.drift",
                                Shown.number(rounded(computed)),
                                Shown.number(
                                    rounded(
                                        100 * (found.calibration().stepsPerMm() / computed - 1)))),
                            "quiet")));
    for (String warning : found.warnings()) {
      result
          .getChildren()
          .add(Pieces.row(8, Mark.WARNING.sign(12), Pieces.paragraph(warning, "small")));
    }
    take.setText(
        Texts.of(
            "travel.take",
            PlaceNames.field(found.path()),
            Shown.number(rounded(found.calibration().stepsPerMm()))));
  }

  static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue();
  }

  private void take() {
    TravelStudy found = study.orElseThrow();
    double current = chosen().orElseThrow().stepsPerMm();
    PrinterProfile profile = desk.profile();
    Path file = desk.printer().file();
    TravelRuns kept =
        new TravelRuns(
            axis.getValue(), number(commanded).orElseThrow(), values, number(error).orElseThrow());
    desk.values()
        .edit(found.path(), rounded(found.calibration().stepsPerMm()))
        .ifPresentOrElse(
            desk.link().said()::set,
            () -> {
              values = List.of();
              work();
              Kept.in(
                  desk,
                  () -> PrinterHistory.beside(file).calibrated(profile, kept, current, found));
            });
  }
}
