package dev.gantrywright.ui;

import dev.gantrywright.ui.names.NamesDesk;
import dev.gantrywright.ui.shell.HeaderBar;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.time.Instant;
import java.util.Optional;

/**
 * Undo and redo of the profile and of the names. While the names are in hand both are theirs;
 * elsewhere the last edit comes back first, whichever it was of.
 */
final class UndoSteps {
  private final PrinterDesk desk;
  private final NamesDesk names;

  UndoSteps(PrinterDesk desk, NamesDesk names) {
    this.desk = desk;
    this.names = names;
  }

  /** Names the next steps on the header's buttons. */
  void label(HeaderBar header) {
    header.undo(
        (undoesNames() ? names.history().get() : desk.values().history().get()).undoLabel());
    header.redo(
        (redoesNames() ? names.history().get() : desk.values().history().get()).redoLabel());
  }

  void undo() {
    if (undoesNames()) {
      names.undo();
    } else {
      desk.values().undo();
    }
  }

  void redo() {
    if (redoesNames()) {
      names.redo();
    } else {
      desk.values().redo();
    }
  }

  private boolean namesInHand() {
    return desk.stage().get() == Stage.DESCRIBE && desk.part().get().equals(PrinterDesk.NAMES);
  }

  private boolean undoesNames() {
    Optional<Instant> name = names.history().get().undoMoment();
    Optional<Instant> value = desk.values().history().get().undoMoment();
    return namesInHand()
        || name.isPresent() && (value.isEmpty() || name.get().isAfter(value.get()));
  }

  private boolean redoesNames() {
    Optional<Instant> name = names.history().get().redoMoment();
    Optional<Instant> value = desk.values().history().get().redoMoment();
    return namesInHand()
        || name.isPresent() && (value.isEmpty() || name.get().isBefore(value.get()));
  }
}
