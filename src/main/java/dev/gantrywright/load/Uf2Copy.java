package dev.gantrywright.load;

import java.io.IOException;
import java.time.Duration;
import java.util.function.BooleanSupplier;

/**
 * Copies a UF2 file to a board's own drive. The board programs itself block by block and restarts:
 * that its drive goes away is the sign that it took the file. There is nothing left to read back.
 */
public final class Uf2Copy {
  private final Card card;
  private final BooleanSupplier there;
  private final Duration wait;

  /**
   * @param there whether the drive is still there; asked again and again
   * @param wait how long the board may take to restart
   */
  public Uf2Copy(Card card, BooleanSupplier there, Duration wait) {
    this.card = card;
    this.there = there;
    this.wait = wait;
  }

  /**
   * Copies and waits for the drive to go away.
   *
   * @throws LoadProblem where the file could not be written while the drive stayed
   */
  public LoadOutcome copy(byte[] image, String name) throws LoadProblem {
    IOException late = null;
    try {
      card.write(name, image);
    } catch (IOException e) {
      // The board may restart before the system has closed the file: the drive decides.
      late = e;
    }
    long until = System.nanoTime() + wait.toNanos();
    while (there.getAsBoolean()) {
      if (System.nanoTime() > until) {
        return stayed(late);
      }
      try {
        Thread.sleep(50);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    return there.getAsBoolean()
        ? stayed(late)
        : new LoadOutcome(
            LoadOutcome.State.LOADED,
            "The board took the file and restarted: its drive went away.",
            "Go on to Prove.");
  }

  private LoadOutcome stayed(IOException late) throws LoadProblem {
    if (late != null) {
      throw new LoadProblem(
          LoadProblem.Kind.WRITE,
          "writing to "
              + card.shown()
              + " failed: "
              + late.getMessage()
              + "; put the board into its loader again and copy once more",
          late);
    }
    return new LoadOutcome(
        LoadOutcome.State.NOT_LOADED,
        "The drive is still there: the board did not take the file.",
        "Check that the file's family is this board's.");
  }
}
