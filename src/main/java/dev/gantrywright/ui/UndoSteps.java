package dev.gantrywright.ui;

import dev.gantrywright.app.History;
import dev.gantrywright.ui.names.NamesDesk;
import dev.gantrywright.ui.shell.HeaderBar;
import dev.gantrywright.ui.state.Cell;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Undo and redo of the profile, of the names and of the marks in the trace. While the names are in
 * hand both are theirs; elsewhere the last edit comes back first, whichever it was of.
 */
final class UndoSteps {
  private final PrinterDesk desk;
  private final Source values;
  private final Source names;
  private final Source marks;

  /** One history, and what goes a step in it. */
  private record Source(Supplier<History<?>> history, Runnable undo, Runnable redo) {}

  UndoSteps(PrinterDesk desk, NamesDesk names) {
    this.desk = desk;
    values =
        new Source(() -> desk.values().history().get(), desk.values()::undo, desk.values()::redo);
    this.names = new Source(() -> names.history().get(), names::undo, names::redo);
    marks = source(desk.look().marks());
  }

  private static <T> Source source(Cell<History<T>> cell) {
    return new Source(
        cell::get, () -> cell.update(History::undo), () -> cell.update(History::redo));
  }

  /** Names the next steps on the header's buttons. */
  void label(HeaderBar header) {
    header.undo(undone().history().get().undoLabel());
    header.redo(redone().history().get().redoLabel());
  }

  void undo() {
    undone().undo().run();
  }

  void redo() {
    redone().redo().run();
  }

  private boolean namesInHand() {
    return desk.stage().get() == Stage.DESCRIBE && desk.part().get().equals(PrinterDesk.NAMES);
  }

  private Source undone() {
    return last(History::undoMoment, Comparator.naturalOrder());
  }

  private Source redone() {
    return last(History::redoMoment, Comparator.reverseOrder());
  }

  /** The names while they are in hand; else whose moment is the greatest; the profile for none. */
  private Source last(Function<History<?>, Optional<Instant>> moment, Comparator<Instant> order) {
    if (namesInHand()) {
      return names;
    }
    return List.of(values, names, marks).stream()
        .filter(each -> moment.apply(each.history().get()).isPresent())
        .max(Comparator.comparing(each -> moment.apply(each.history().get()).orElseThrow(), order))
        .orElse(values);
  }
}
