package dev.gantrywright.link.practice;

import java.util.Arrays;
import java.util.concurrent.locks.LockSupport;

/**
 * What a real wire would do to the practice board's bytes: it takes time, and at another baud rate
 * than the board's it turns text to noise. A board has two wires, one each way, and works at once:
 * an exchange lasts as long as its bytes, from the arrival of the question on.
 */
public final class Wire {
  /** Start, eight data and stop bit. */
  private static final int BITS_PER_BYTE = 10;

  /** A system wakes a sleeper late by some tens of microseconds; the last of a wait is spun. */
  private static final long SPUN_NANOS = 400_000L;

  private final int boardBaud;
  private final boolean paced;
  private volatile int clientBaud;
  private long heardAt;

  /**
   * @param boardBaud what the board is set to, bit/s
   * @param paced whether bytes take the time that they would on a wire
   */
  public Wire(int boardBaud, boolean paced) {
    this.boardBaud = boardBaud;
    this.clientBaud = boardBaud;
    this.paced = paced;
  }

  /** No delay and any rate. */
  public static Wire ideal() {
    return new Wire(0, false);
  }

  /** What the client sets its end to, bit/s. */
  public void clientBaud(int baud) {
    clientBaud = baud;
  }

  int clientBaud() {
    return clientBaud;
  }

  /** Time that so many bytes take, in nanoseconds; 0 where the wire takes none. */
  public long nanosFor(int bytes) {
    return paced && boardBaud > 0 ? bytes * BITS_PER_BYTE * 1_000_000_000L / boardBaud : 0;
  }

  /** The client's bytes as they come out at the board, after the time that they take. */
  public synchronized byte[] toBoard(byte[] bytes) {
    heardAt = System.nanoTime() + nanosFor(bytes.length);
    return carried(bytes, heardAt);
  }

  /**
   * The board's answer as it comes out at the client. The board begins it at the moment at which it
   * has heard the last byte: it needs no time to think.
   */
  public synchronized byte[] toClient(byte[] bytes) {
    return carried(bytes, heardAt + nanosFor(bytes.length));
  }

  private byte[] carried(byte[] bytes, long until) {
    if (paced && boardBaud > 0) {
      await(until);
    }
    if (boardBaud <= 0 || boardBaud == clientBaud) {
      return bytes;
    }
    byte[] noise = Arrays.copyOf(bytes, bytes.length);
    for (int i = 0; i < noise.length; i++) {
      // Every other bit edge is missed: no printable byte stays one.
      noise[i] = (byte) (noise[i] << 1 ^ 0x80 | 0x80);
    }
    return noise;
  }

  private static void await(long until) {
    for (long left = until - System.nanoTime(); left > 0; left = until - System.nanoTime()) {
      if (left > SPUN_NANOS) {
        LockSupport.parkNanos(left - SPUN_NANOS);
      } else {
        Thread.onSpinWait();
      }
      if (Thread.currentThread().isInterrupted()) {
        return;
      }
    }
  }
}
