package dev.gantrywright.link.practice;

import dev.gantrywright.link.pty.Pty;
import java.io.IOException;
import java.util.Arrays;
import java.util.concurrent.ThreadFactory;
import java.util.function.LongSupplier;

/** Serves a practice board on a pseudo-terminal, so that any program finds it as a serial port. */
public final class PracticePty implements AutoCloseable {
  private final Pty pty;
  private final Thread pump;

  private PracticePty(Pty pty, Thread pump) {
    this.pty = pty;
    this.pump = pump;
  }

  /**
   * Begins to serve.
   *
   * @throws IOException when the system has no pseudo-terminals
   */
  public static PracticePty open(
      PracticeBoard board, Wire wire, LongSupplier nanoTime, ThreadFactory threads)
      throws IOException {
    Pty pty = Pty.open();
    Thread pump = threads.newThread(() -> serve(pty, board, wire, nanoTime));
    pump.setName("practice " + pty.path());
    pump.setDaemon(true);
    pump.start();
    return new PracticePty(pty, pump);
  }

  private static void serve(Pty pty, PracticeBoard board, Wire wire, LongSupplier nanoTime) {
    PracticeLine line = new PracticeLine(board);
    byte[] buffer = new byte[4096];
    try {
      for (int n = pty.read(buffer); n >= 0; n = pty.read(buffer)) {
        if (n > 0) {
          byte[] heard = wire.toBoard(Arrays.copyOf(buffer, n));
          byte[] answer = line.take(heard, heard.length, nanoTime.getAsLong());
          pty.write(wire.toClient(answer));
        }
      }
    } catch (IOException e) {
      // The system took the terminal away: nobody is left to be served.
      return;
    }
  }

  /** The port that a client opens. */
  public String path() {
    return pty.path();
  }

  @Override
  public void close() {
    pty.close();
    try {
      pump.join(1_000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
