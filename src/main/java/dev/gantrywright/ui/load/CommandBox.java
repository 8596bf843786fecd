package dev.gantrywright.ui.load;

import dev.gantrywright.load.Caution;
import dev.gantrywright.load.FlashCommand;
import dev.gantrywright.load.TypedConfirmation;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.LoadState;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.WordList;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * A flashing command of the user's own, kept in the profile. One that erases the whole chip asks
 * for its sentence first.
 */
final class CommandBox extends VBox {
  /** Where the outcome stands: under the buttons. */
  static final int UNDER = 6;

  private final PrinterDesk desk;
  private final LoadDesk load;
  private final ImageBox image;
  private final TextField command = Inputs.field("load-command", "load.command");
  private final TextField confirm = Inputs.field("load-confirm", "load.confirm");
  private final Label lost = Pieces.paragraph("", "strong");
  private final HBox confirmRow;
  private final Cautions cautions = new Cautions();
  private final Label output = Pieces.paragraph("", "mono", "small");
  private final Button run;
  private final Button cancel;

  CommandBox(PrinterDesk desk, LoadDesk load, ImageBox image) {
    super(8);
    this.desk = desk;
    this.load = load;
    this.image = image;
    run = Pieces.button("load-run", Texts.of("load.run"), "act", this::run);
    cancel = Pieces.button("load-cancel", Texts.of("write.cancel"), "act-second", load::cancel);
    command.setPromptText(Texts.of("load.command.prompt"));
    command.textProperty().addListener((was, before, now) -> look());
    command
        .focusedProperty()
        .addListener(
            (was, before, focused) -> {
              if (!focused) {
                keep();
              }
            });
    confirmRow = Inputs.row("load.confirm", confirm);
    getChildren()
        .addAll(
            Pieces.label(Texts.of("load.byCommand"), "strong"),
            Inputs.row("load.command", command),
            cautions,
            lost,
            confirmRow,
            Pieces.row(10, run, cancel),
            output);
    look();
  }

  /** Takes the profile's command, unless one is being typed. */
  void told(List<String> words) {
    if (!command.isFocused()) {
      command.setText(WordList.typed(words));
    }
  }

  private List<String> words() {
    return WordList.words(command.getText());
  }

  private void keep() {
    List<String> words = words();
    if (!words.equals(desk.profile().build().flash())) {
      desk.values().edit("build.flash", words.isEmpty() ? null : words);
    }
  }

  /** Cautions and confirmation belong to the command as it stands. */
  private void look() {
    Optional<FlashCommand> flash = flash();
    Optional<TypedConfirmation> asked =
        flash.flatMap(f -> f.confirmation(desk.sheet().map(s -> s.name()).orElse("")));
    // Beside the buttons stand the cautions of every load; here, what only an erase adds.
    cautions.show(asked.isPresent() ? Caution.before(Caution.Act.WHOLE_CHIP_ERASE) : List.of());
    Inputs.show(cautions, asked.isPresent());
    Inputs.show(lost, asked.isPresent());
    Inputs.show(confirmRow, asked.isPresent());
    asked.ifPresent(
        typed -> {
          lost.setText(typed.lost());
          confirm.setPromptText(typed.sentence());
        });
  }

  private Optional<FlashCommand> flash() {
    try {
      return Optional.of(FlashCommand.of(words(), Path.of("image")));
    } catch (IllegalArgumentException unfinished) {
      return Optional.empty();
    }
  }

  private void run() {
    keep();
    image.settle();
    load.flash(words(), confirm.getText(), image.reason());
  }

  void show(LoadState state) {
    boolean flashing = state.kind() == LoadState.Kind.FLASHING;
    run.setDisable(state.busy());
    Inputs.show(cancel, flashing);
    output.setText(String.join("\n", state.lines()));
    Inputs.show(output, !state.lines().isEmpty());
  }
}
