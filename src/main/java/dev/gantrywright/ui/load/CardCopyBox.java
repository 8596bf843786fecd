package dev.gantrywright.ui.load;

import dev.gantrywright.load.CopyStep;
import dev.gantrywright.load.Drive;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.quantity.HomePath;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.LoadState;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The verified copy: card, name, the steps as they go, and the card that comes back. */
final class CardCopyBox extends VBox {
  /** Where the outcome stands: under the buttons. */
  static final int UNDER = 5;

  private final LoadDesk load;
  private final ImageBox image;
  private final TextField card = Inputs.field("load-card", "load.card");
  private final TextField name = Inputs.field("load-name", "load.name");
  private final HBox found = Pieces.row(8);
  private final VBox steps = new VBox(4);
  private final Button copy;
  private final Button back;

  CardCopyBox(LoadDesk load, ImageBox image) {
    super(8);
    this.load = load;
    this.image = image;
    copy = Pieces.button("load-copy", Texts.of("load.copy"), "act", this::copy);
    back = Pieces.button("load-back", Texts.of("load.back"), "act-second", this::back);
    Button look = Pieces.button("load-look", Texts.of("load.look"), "plain", load::look);
    getChildren()
        .addAll(
            Pieces.label(Texts.of("load.toCard"), "strong"),
            Inputs.row("load.card", card, look),
            found,
            Inputs.row("load.name", name),
            Pieces.row(10, copy, back),
            steps);
  }

  /** The name that the board's loader looks for, unless the user has typed another. */
  void proposeName(String looksFor) {
    if (name.getText().isEmpty() && looksFor != null) {
      name.setText(looksFor);
    }
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
                  () -> card.setText(HomePath.shown(drive.root()))));
    }
    Inputs.show(found, !drives.isEmpty());
  }

  private void copy() {
    Optional<Path> to = Inputs.path(card);
    image.settle();
    if (to.isEmpty() || name.getText().isBlank()) {
      load.state().set(LoadDesk.missing());
      return;
    }
    load.copy(to.get(), name.getText().strip(), image.reason());
  }

  private void back() {
    Inputs.path(card).ifPresentOrElse(load::returned, () -> load.state().set(LoadDesk.missing()));
  }

  void show(LoadState state) {
    copy.setDisable(state.busy());
    back.setDisable(state.busy());
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
