package dev.gantrywright.ui.build;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.TiedDiagnostic;
import dev.gantrywright.build.Cleaning;
import dev.gantrywright.build.Diagnostic;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.BuildState;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.CodeCell;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Runs the build: progress and cancel, what the tools say, what the image is worth. */
final class BuildRunBox extends VBox {
  private final PrinterDesk desk;
  private final Supplier<Path> folder;
  private boolean runs;
  private final Button start;
  private final Button cancel;
  private final ProgressBar progress = new ProgressBar();
  private final Label words = Pieces.paragraph("");
  private final Button clean;
  private final CleanBox cleaning;
  private final HBox outcome = Pieces.row(10);
  private final VBox said = new VBox(6);
  private final ObservableList<String> rows = FXCollections.observableArrayList();
  private final ListView<String> output = new ListView<>(rows);

  /**
   * @param folder the patched folder
   */
  BuildRunBox(PrinterDesk desk, BuildDesk build, Supplier<Path> folder) {
    super(10);
    this.desk = desk;
    this.folder = folder;
    start =
        Pieces.button(
            "build-start",
            Texts.of("build.start"),
            "act",
            () -> build.build(desk.printer(), folder.get()));
    cancel = Pieces.button("build-cancel", Texts.of("write.cancel"), "act-second", build::cancel);
    clean =
        Pieces.button(
            "build-clean",
            Texts.of("build.clean"),
            "plain",
            () -> build.askClean(desk.printer(), folder.get()));
    cleaning = new CleanBox(build);
    progress.setPrefWidth(180);
    progress.setAccessibleText(Texts.of("build.running"));
    output.setFixedCellSize(19);
    output.setCellFactory(view -> new CodeCell());
    output.setAccessibleText(Texts.of("build.output"));
    output.setId("build-output");
    output.getStyleClass().add("sheet-list");
    VBox.setVgrow(output, Priority.ALWAYS);
    HBox.setHgrow(outcome, Priority.ALWAYS);
    outcome.setMaxWidth(Double.MAX_VALUE);
    getChildren()
        .addAll(Pieces.row(10, start, cancel, progress, outcome, clean), cleaning, said, output);
  }

  void show(BuildState state) {
    boolean running = state.kind() == BuildState.Kind.RUNNING;
    runs = running;
    ready();
    for (Node node : new Node[] {cancel, progress}) {
      node.setVisible(running);
      node.setManaged(running);
    }
    progress.setProgress(state.share());
    words.setText(state.words());
    Mark mark =
        switch (state.kind()) {
          case BUILT -> Mark.SETTLED;
          case REFUSED, FAILED -> Mark.ERROR;
          case CANCELLED -> Mark.NOTE;
          default -> null;
        };
    outcome.getChildren().setAll(words);
    if (mark != null) {
      outcome.getChildren().add(0, mark.sign(12));
    }
    rows.setAll(state.lines());
    output.scrollTo(Math.max(0, rows.size() - 1));
    output.setVisible(!rows.isEmpty());
    said.getChildren().clear();
    state.done().ifPresent(this::results);
  }

  /** Whether there is a folder to build in, and a command to build it with. */
  void ready() {
    boolean nowhere = folder.get() == null;
    clean.setDisable(runs || nowhere);
    start.setDisable(runs || nowhere || desk.profile().build().command().isEmpty());
  }

  void cleaning(Optional<Cleaning> plan) {
    cleaning.show(plan);
  }

  private void results(BuildJob.Done done) {
    for (TiedDiagnostic tied : done.diagnostics().stream().limit(6).toList()) {
      said.getChildren().add(diagnostic(tied));
    }
    done.verdict()
        .ifPresent(
            verdict ->
                verdict.remarks().stream()
                    .limit(4)
                    .forEach(
                        remark ->
                            said.getChildren()
                                .add(
                                    Pieces.row(
                                        8,
                                        Mark.valueOf(remark.level().name()).sign(12),
                                        Pieces.paragraph(
                                            remark.text() + " " + remark.todo(), "small")))));
  }

  private HBox diagnostic(TiedDiagnostic tied) {
    Diagnostic diagnostic = tied.diagnostic();
    String place = diagnostic.file().isEmpty() ? "" : diagnostic.file() + ":" + diagnostic.line();
    HBox row =
        Pieces.row(
            8,
            Mark.valueOf(diagnostic.level().name()).sign(12),
            Pieces.label(place, "mono", "small", "quiet"),
            Pieces.label(diagnostic.text(), "small"));
    tied.ties().stream()
        .flatMap(tie -> tie.paths().stream())
        .findFirst()
        .ifPresent(
            path ->
                row.getChildren()
                    .add(
                        Pieces.button(
                            "build-tie", PlaceNames.field(path), "plain", () -> desk.goTo(path))));
    return row;
  }
}
