package dev.gantrywright.link.practice;

import dev.gantrywright.link.ByteQueue;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Transport;
import java.time.Duration;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.LongSupplier;

/** The practice board inside this program: bytes in, bytes out, no wire between. */
public final class PracticeTransport implements Transport {
  private final PracticeLine line;
  private final LongSupplier nanoTime;
  private final ByteQueue answers = new ByteQueue(1 << 16);
  private final ReentrantLock writing = new ReentrantLock();
  private volatile boolean closed;

  public PracticeTransport(PracticeBoard board, LongSupplier nanoTime) {
    this.line = new PracticeLine(board);
    this.nanoTime = nanoTime;
  }

  @Override
  public String name() {
    return "practice:";
  }

  @Override
  public int read(byte[] into, Duration wait) throws LinkException {
    try {
      int n = closed ? -1 : answers.take(into, wait);
      if (n < 0) {
        throw LinkException.closed(name());
      }
      return n;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw LinkException.closed(name());
    }
  }

  @Override
  public void write(byte[] bytes) throws LinkException {
    writing.lock();
    try {
      if (closed) {
        throw LinkException.closed(name());
      }
      byte[] out = line.take(bytes, bytes.length, nanoTime.getAsLong());
      if (!answers.put(out, 0, out.length)) {
        throw LinkException.closed(name());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw LinkException.closed(name());
    } finally {
      writing.unlock();
    }
  }

  @Override
  public void close() {
    closed = true;
    answers.end();
  }
}
