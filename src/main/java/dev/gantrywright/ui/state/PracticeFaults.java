package dev.gantrywright.ui.state;

import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * What the user has made wrong with the practice board. Takes effect at once, and stays when the
 * board is loaded or connected anew; only a silence is over with its board.
 */
public final class PracticeFaults {
  private final LongSupplier nanoTime;
  private final Cell<List<Fault>> chosen = new Cell<>(List.of());
  private Optional<PracticeBoard> board = Optional.empty();

  PracticeFaults(LongSupplier nanoTime) {
    this.nanoTime = nanoTime;
  }

  public Cell<List<Fault>> chosen() {
    return chosen;
  }

  /** The board that is connected now; empty where none is. */
  void board(Optional<PracticeBoard> connected) {
    board = connected;
    set(chosen.get().stream().filter(fault -> !(fault instanceof Fault.Silence)).toList());
  }

  /** Makes one more thing wrong; the same again changes nothing. */
  public void add(Fault fault) {
    if (!chosen.get().contains(fault)) {
      List<Fault> more = new ArrayList<>(chosen.get());
      more.add(fault);
      set(more);
    }
  }

  /** From this moment on the board answers nothing for so long. */
  public void silence(double seconds) {
    board.ifPresent(
        silent -> {
          double now = silent.seconds(nanoTime.getAsLong());
          add(new Fault.Silence(now, now + seconds));
        });
  }

  /** Mends one. */
  public void mend(Fault fault) {
    set(chosen.get().stream().filter(each -> !each.equals(fault)).toList());
  }

  private void set(List<Fault> next) {
    chosen.set(List.copyOf(next));
    board.ifPresent(connected -> connected.faults(next));
  }
}
