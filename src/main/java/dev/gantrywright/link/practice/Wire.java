package dev.gantrywright.link.practice;

import java.util.Arrays;
import java.util.concurrent.locks.LockSupport;

/**
 * What a real wire would do to the practice board's bytes: it takes time, and at another baud rate
 * than the board's it turns text to noise.
 */
public final class Wire {
  /** Start, eight data and stop bit. */
  private static final int BITS_PER_BYTE = 10;

  private static final long OVERRUN_NANOS = 300_000L;

  private final int boardBaud;
  private final boolean paced;
  private volatile int clientBaud;
  private long free;

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

  /** The bytes as they come out at the far end, after the time that they take. */
  public byte[] carry(byte[] bytes) {
    if (paced && boardBaud > 0) {
      occupy(bytes.length * BITS_PER_BYTE * 1_000_000_000L / boardBaud);
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

  /**
   * Waits until the wire would have carried the bytes. A wait that the system let run over a little
   * is not added to the next one: a wire does not wait for a scheduler.
   */
  private synchronized void occupy(long nanos) {
    long now = System.nanoTime();
    long begin = free != 0 && now - free < OVERRUN_NANOS ? free : now;
    free = begin + nanos;
    for (long left = free - now; left > 0; left = free - System.nanoTime()) {
      LockSupport.parkNanos(left);
      if (Thread.currentThread().isInterrupted()) {
        return;
      }
    }
  }
}
