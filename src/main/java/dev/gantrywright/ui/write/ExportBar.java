package dev.gantrywright.ui.write;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.quantity.HomePath;
import dev.gantrywright.ui.state.ExportDesk;
import dev.gantrywright.ui.state.ExportState;
import dev.gantrywright.ui.state.PatchedPlace;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;

/** Where the patched folder goes; progress, cancel, and opening it when it is there. */
final class ExportBar extends VBox implements Subscription {
  private final PrinterDesk desk;
  private final ExportDesk export;
  private final TextField target = new TextField();
  private final ProgressBar progress = new ProgressBar(0);
  private final Label words = Pieces.label("", "quiet");
  private final HBox outcome = Pieces.row(10);
  private final Button write;
  private final Button cancel;
  private final Button replace;
  private final Button open;
  private final Subscriptions subscriptions = new Subscriptions();
  private String proposed;
  private FirmwareFolder folder;

  /**
   * @param show opens a folder in the system's own window
   */
  ExportBar(PrinterDesk desk, ExportDesk export, Consumer<Path> show) {
    super(6);
    this.desk = desk;
    this.export = export;
    target.setId("export-target");
    target.setAccessibleText(Texts.of("write.target"));
    target.setText(proposed());
    proposed = target.getText();
    folder = desk.opened().get().folder();
    HBox box = new HBox(target);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(target, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    Label label = Pieces.label(Texts.of("write.target"), "field-label");
    label.setLabelFor(target);
    Button browse = Pieces.button("export-browse", Texts.of("write.browse"), "plain", this::browse);
    write = Pieces.button("export", Texts.of("write.export"), "act", () -> write(false));
    cancel = Pieces.button("export-cancel", Texts.of("write.cancel"), "act-second", export::cancel);
    replace =
        Pieces.button("export-replace", Texts.of("write.replace"), "act-second", () -> write(true));
    open =
        Pieces.button(
            "export-open",
            Texts.of("write.open.folder"),
            "act-second",
            () -> show.accept(export.state().get().target()));
    progress.setPrefWidth(180);
    progress.setAccessibleText(Texts.of("write.progress"));
    getChildren().addAll(Pieces.row(10, label, box, browse, write), outcome);
    subscriptions.add(export.state().observe(this::show));
    subscriptions.add(desk.planned().observe(planned -> enable()));
    subscriptions.add(desk.folder().state().listen(state -> enable()));
    subscriptions.add(desk.opened().listen(opened -> reopened()));
  }

  private String proposed() {
    Path place = PatchedPlace.of(desk.opened().get());
    return place == null ? "" : HomePath.shown(place);
  }

  /** Another folder is written elsewhere, unless the user said where. */
  private void reopened() {
    String next = proposed();
    if (!next.equals(proposed) && target.getText().equals(proposed)) {
      target.setText(next);
    }
    proposed = next;
    FirmwareFolder now = desk.opened().get().folder();
    if (now != folder) {
      folder = now;
      export.forget();
    }
  }

  private void browse() {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(Texts.of("write.target"));
    java.io.File chosen = chooser.showDialog(getScene().getWindow());
    if (chosen != null) {
      target.setText(HomePath.shown(chosen.toPath()));
    }
  }

  private void write(boolean over) {
    desk.planned()
        .get()
        .plan()
        .ifPresent(
            plan -> {
              try {
                export.write(plan, HomePath.read(target.getText()), over);
              } catch (InvalidPathException unreadable) {
                words.setText(Texts.of("write.noPath", target.getText()));
                outcome.getChildren().setAll(Mark.ERROR.sign(12), words);
              }
            });
  }

  private void enable() {
    boolean writing = export.state().get().kind() == ExportState.Kind.WRITING;
    boolean current =
        desk.planned().get().revision() == desk.values().revision()
            && desk.folder().state().get().current();
    write.setDisable(writing || !current || desk.planned().get().plan().isEmpty());
    target.setDisable(writing);
  }

  private void show(ExportState state) {
    words.setText(state.words());
    words.getStyleClass().remove("error-text");
    switch (state.kind()) {
      case IDLE -> outcome.getChildren().clear();
      case WRITING -> {
        progress.setProgress(state.share());
        outcome.getChildren().setAll(progress, cancel, words);
      }
      case DONE -> outcome.getChildren().setAll(Mark.SETTLED.sign(12), words, open);
      case CANCELLED -> outcome.getChildren().setAll(Mark.NOTE.sign(12), words);
      case OCCUPIED -> outcome.getChildren().setAll(Mark.WARNING.sign(12), words, replace);
      case FAILED -> {
        words.getStyleClass().add("error-text");
        outcome.getChildren().setAll(Mark.ERROR.sign(12), words);
      }
    }
    enable();
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
