package dev.gantrywright.prove;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.Reply;
import dev.gantrywright.prove.Sample.Validity;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * Asks for the endstops again and again, never with more than one question under way. A line that
 * cannot keep the wished rate is asked as often as it answers; one that is silent, ever less often.
 */
public final class Watch implements AutoCloseable {
  private static final long LONGEST_PAUSE_NANOS = 2_000_000_000L;

  /** Answers that may wait for the listener: what a busy computer may let slip by at once. */
  private static final int MOST_BEHIND = 64;

  private final LineSession session;
  private final EndstopReader reader;
  private final EndstopNames names;
  private final Consumer<Sample> sink;
  private final LongSupplier nanoTime;
  private final long periodNanos;
  private final Thread thread;
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition closing = lock.newCondition();
  private boolean closed;
  private volatile long looked = -1;
  private Map<String, Boolean> last = Map.of();

  private Watch(
      LineSession session,
      Collection<String> ends,
      double hertz,
      Consumer<Sample> sink,
      LongSupplier nanoTime,
      ThreadFactory threads) {
    this.session = session;
    this.reader = new EndstopReader(session.dialect());
    this.names = new EndstopNames(ends, session.dialect().endstopNames());
    this.sink = sink;
    this.nanoTime = nanoTime;
    this.periodNanos = hertz <= 0 ? 0 : (long) (1e9 / hertz);
    this.thread = threads.newThread(this::run);
    thread.setName("watch " + session.name());
    thread.setDaemon(true);
  }

  /**
   * Begins to watch.
   *
   * @param ends the axis ends of the profile, to which reported names are put
   * @param hertz questions a second; 0 for as many as the line takes
   * @param sink receives each sample, on the watch's own thread
   */
  public static Watch start(
      LineSession session,
      Collection<String> ends,
      double hertz,
      Consumer<Sample> sink,
      LongSupplier nanoTime,
      ThreadFactory threads) {
    Watch watch = new Watch(session, ends, hertz, sink, nanoTime, threads);
    watch.thread.start();
    return watch;
  }

  private void run() {
    long due = nanoTime.getAsLong();
    long pause = periodNanos;
    Question question = null;
    try {
      while (!waitUntil(due)) {
        question = question == null ? new Question(0) : question.next();
        Reply reply = question.answer.get();
        if (isClosed()) {
          return;
        }
        Sample sample = sample(reply);
        sink.accept(sample);
        looked = question.number;
        pause =
            sample.validity() == Validity.VALID
                ? periodNanos
                : Math.min(LONGEST_PAUSE_NANOS, Math.max(50_000_000L, 2 * pause));
        // A late answer shifts the beat; it is never made up for by a burst.
        due = Math.max(due + pause, nanoTime.getAsLong());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  /**
   * One question, and the one after it. At full rate the next is asked by the thread that got the
   * answer, before the watch's own thread is even woken: to wake it first would leave the line
   * unused for a tenth of a millisecond. A listener that falls further and further behind holds the
   * questions up.
   */
  private final class Question {
    private final long number;
    private final CompletableFuture<Reply> answer = new CompletableFuture<>();
    private Question next;

    Question(long number) {
      this.number = number;
      session.ask(session.dialect().endstopQuery()).thenAccept(this::answered);
    }

    private void answered(Reply reply) {
      if (periodNanos == 0 && reply.answered() && number - looked <= MOST_BEHIND && !isClosed()) {
        next();
      }
      answer.complete(reply);
    }

    synchronized Question next() {
      if (next == null) {
        next = new Question(number + 1);
      }
      return next;
    }
  }

  private Sample sample(Reply reply) {
    if (reply.answered()) {
      last = states(reader.read(reply.lines()));
    }
    Validity validity =
        switch (reply.outcome()) {
          case ANSWERED -> Validity.VALID;
          case LOST, REFUSED -> Validity.DISCONNECTED;
          default -> Validity.STALE;
        };
    return new Sample(reply.doneNanos(), reply.latencyNanos(), validity, last);
  }

  private Map<String, Boolean> states(List<EndstopReading> readings) {
    Map<String, Boolean> states = new LinkedHashMap<>();
    for (EndstopReading reading : readings) {
      String end = names.match(reading.name()).map(EndstopNames.Match::end).orElse(reading.name());
      states.put(end, reading.triggered());
    }
    return java.util.Collections.unmodifiableMap(states);
  }

  private boolean waitUntil(long due) throws InterruptedException {
    lock.lockInterruptibly();
    try {
      long left = due - nanoTime.getAsLong();
      while (!closed && left > 0) {
        left = closing.awaitNanos(left);
      }
      return closed;
    } finally {
      lock.unlock();
    }
  }

  private boolean isClosed() {
    lock.lock();
    try {
      return closed;
    } finally {
      lock.unlock();
    }
  }

  @Override
  public void close() {
    lock.lock();
    try {
      closed = true;
      closing.signalAll();
    } finally {
      lock.unlock();
    }
    if (Thread.currentThread() != thread) {
      try {
        thread.join(TimeUnit.SECONDS.toMillis(1));
        thread.interrupt();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
