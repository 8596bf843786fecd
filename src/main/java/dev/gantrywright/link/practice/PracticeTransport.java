package dev.gantrywright.link.practice;

import dev.gantrywright.link.ByteQueue;
import dev.gantrywright.link.LineSplitter;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Transport;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.LongSupplier;

/** The practice board inside this program: bytes in, bytes out, no wire between. */
public final class PracticeTransport implements Transport {
  private final PracticeBoard board;
  private final LongSupplier nanoTime;
  private final ByteQueue answers = new ByteQueue(1 << 16);
  private final ReentrantLock writing = new ReentrantLock();
  private final LineSplitter splitter;
  private volatile boolean closed;
  private String pending = "";

  public PracticeTransport(PracticeBoard board, LongSupplier nanoTime) {
    this.board = board;
    this.nanoTime = nanoTime;
    this.splitter = new LineSplitter(512, line -> pending += answer(line.text(), line.nanos()));
  }

  private String answer(String command, long now) {
    StringBuilder reply = new StringBuilder();
    board.obey(command, now).forEach(line -> reply.append(line).append("\r\n"));
    return reply.toString();
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
      splitter.feed(bytes, bytes.length, nanoTime.getAsLong());
      byte[] out = pending.getBytes(StandardCharsets.UTF_8);
      pending = "";
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
