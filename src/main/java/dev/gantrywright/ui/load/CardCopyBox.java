package dev.gantrywright.ui.load;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.load.CopyStep;
import dev.gantrywright.load.Drive;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.BuildState;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.LoadState;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The verified copy: image, card, name, the steps as they go, and the card that comes back. */
final class CardCopyBox extends VBox {
  private final LoadDesk load;
  private final BuildDesk build;
  private final TextField image = field("load-image", "load.image");
  private final TextField card = field("load-card", "load.card");
  private final TextField name = field("load-name", "load.name");
  private final HBox found = Pieces.row(8);
  private final VBox steps = new VBox(4);
  private final Button copy;
  private final Button back;
  private final Label words = Pieces.paragraph("");
  private final HBox outcome = Pieces.row(8);

  CardCopyBox(LoadDesk load, BuildDesk build) {
    super(8);
    this.load = load;
    this.build = build;
    copy = Pieces.button("load-copy", Texts.of("load.copy"), "act", this::copy);
    back = Pieces.button("load-back", Texts.of("load.back"), "act-second", this::back);
    Button look = Pieces.button("load-look", Texts.of("load.look"), "plain", load::look);
    getChildren()
        .addAll(
            row("load.image", image),
            row("load.card", card, look),
            found,
            row("load.name", name),
            Pieces.row(10, copy, back, outcome),
            steps);
  }

  private static TextField field(String id, String key) {
    TextField field = new TextField();
    field.setId(id);
    field.setAccessibleText(Texts.of(key));
    return field;
  }

  private static HBox row(String key, TextField field, Button... more) {
    Label label = Pieces.label(Texts.of(key), "field-label");
    label.setMinWidth(110);
    label.setLabelFor(field);
    HBox box = new HBox(field);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    box.setMaxWidth(620);
    HBox row = Pieces.row(10, label, box);
    row.getChildren().addAll(more);
    return row;
  }

  /** The name that the board's loader looks for, unless the user has typed another. */
  void proposeName(String looksFor) {
    if (name.getText().isEmpty() && looksFor != null) {
      name.setText(looksFor);
    }
  }

  /** The image that was built last, unless the user has chosen another. */
  void built(BuildState state) {
    state
        .done()
        .filter(BuildJob.Done::good)
        .flatMap(done -> done.build().artefact())
        .ifPresent(artefact -> image.setText(artefact.toString()));
  }

  void drives(List<Drive> drives) {
    found.getChildren().clear();
    for (Drive drive : drives) {
      found
          .getChildren()
          .add(
              Pieces.button(
                  "load-drive",
                  drive.root() + " · " + drive.fileSystem(),
                  "act-second",
                  () -> card.setText(drive.root().toString())));
    }
    found.setVisible(!drives.isEmpty());
    found.setManaged(!drives.isEmpty());
  }

  private Optional<Path> path(TextField field) {
    try {
      return field.getText().isBlank()
          ? Optional.empty()
          : Optional.of(Path.of(field.getText().strip()));
    } catch (InvalidPathException unreadable) {
      return Optional.empty();
    }
  }

  private void copy() {
    Optional<Path> from = path(image);
    Optional<Path> to = path(card);
    if (from.isEmpty() || to.isEmpty() || name.getText().isBlank()) {
      words.setText(Texts.of("load.missing"));
      outcome.getChildren().setAll(Mark.WARNING.sign(12), words);
      return;
    }
    load.copy(
        from.get(),
        to.get(),
        name.getText().strip(),
        build.state().get().done().flatMap(BuildJob.Done::verdict));
  }

  private void back() {
    path(card).ifPresent(load::returned);
  }

  void show(LoadState state) {
    boolean copying = state.kind() == LoadState.Kind.COPYING;
    copy.setDisable(copying);
    back.setDisable(copying);
    words.setText(state.words());
    Mark mark =
        switch (state.kind()) {
          case COPIED, LOADED -> Mark.SETTLED;
          case FAILED -> Mark.ERROR;
          case UNSURE -> Mark.WARNING;
          default -> Mark.OPEN;
        };
    if (state.kind() == LoadState.Kind.IDLE) {
      outcome.getChildren().clear();
    } else {
      outcome.getChildren().setAll(mark.sign(12), words);
    }
    steps.getChildren().clear();
    state
        .step()
        .ifPresent(
            reached -> {
              for (CopyStep step : CopyStep.values()) {
                boolean done = step.ordinal() <= reached.ordinal();
                steps
                    .getChildren()
                    .add(
                        Pieces.row(
                            8,
                            (done ? Mark.SETTLED : Mark.OPEN).sign(11),
                            Pieces.label(step.words(), done ? "label" : "quiet")));
              }
            });
  }
}
