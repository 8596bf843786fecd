package dev.gantrywright.link;

import java.time.Duration;

/**
 * Bytes to and from one machine, over whatever carries them. One reader and one writer may work at
 * the same time; {@link #close()} may come from any thread and ends both.
 */
public interface Transport extends AutoCloseable {
  /** What the user calls this line, for messages: a port name or an address. */
  String name();

  /**
   * Reads what has arrived.
   *
   * @param into receives the bytes from index 0
   * @param wait how long to wait for the first byte; served in steps of up to 100 ms by some
   *     drivers
   * @return how many bytes came; 0 when none came in time
   * @throws LinkException when the line is gone or closed
   */
  int read(byte[] into, Duration wait) throws LinkException;

  /** Takes what a line brings. */
  @FunctionalInterface
  interface Receiver {
    /**
     * @param bytes only good during the call
     * @param count how many of them came; 0 now and then while the line is quiet
     * @return false to end
     */
    boolean take(byte[] bytes, int count);
  }

  /**
   * Hands over what arrives, on the calling thread, until the receiver has enough.
   *
   * @throws LinkException when the line is gone or closed
   */
  default void receive(Receiver receiver) throws LinkException {
    byte[] buffer = new byte[4096];
    while (receiver.take(buffer, read(buffer, Duration.ofMillis(100)))) {
      // The receiver says when it is over.
      continue;
    }
  }

  /**
   * Writes all bytes, in order.
   *
   * @throws LinkException when the line is gone or closed, or takes no more bytes
   */
  void write(byte[] bytes) throws LinkException;

  /**
   * Sets the outgoing control lines.
   *
   * @return false where this line has none, or does not say
   */
  default boolean controlLines(boolean dtr, boolean rts) {
    return false;
  }

  /** Gives the line up at once, so that another program can take it. Harmless when repeated. */
  @Override
  void close();
}
