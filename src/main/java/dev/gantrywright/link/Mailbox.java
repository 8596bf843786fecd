package dev.gantrywright.link;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/** What waits for the thread that owns a line. A stop goes first; bytes wait for room. */
final class Mailbox {
  private static final int MOST_BYTES = 1 << 20;

  sealed interface Letter {
    record Bytes(Transport from, byte[] data, long nanos) implements Letter {}

    record Ask(String command, CompletableFuture<Reply> reply) implements Letter {}

    record Stop(CompletableFuture<StopOutcome> outcome) implements Letter {}

    record Gone(Transport from, LinkException why) implements Letter {}

    record Release() implements Letter {}

    record Close() implements Letter {}
  }

  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private final Deque<Letter> letters = new ArrayDeque<>();
  private int bytes;
  private boolean accepting = true;

  /** Waits for room; false when nobody wants bytes any more. */
  boolean putBytes(Transport from, byte[] data, long nanos) throws InterruptedException {
    lock.lockInterruptibly();
    try {
      while (bytes > MOST_BYTES && accepting) {
        changed.await();
      }
      if (!accepting) {
        return false;
      }
      bytes += data.length;
      letters.addLast(new Letter.Bytes(from, data, nanos));
      changed.signalAll();
      return true;
    } finally {
      lock.unlock();
    }
  }

  void put(Letter letter) {
    lock.lock();
    try {
      letters.addLast(letter);
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** Puts a stop first and takes out the commands that it overtakes. */
  List<Letter.Ask> overtake(Letter.Stop stop) {
    lock.lock();
    try {
      List<Letter.Ask> overtaken = new ArrayList<>();
      letters.forEach(
          letter -> {
            if (letter instanceof Letter.Ask ask) {
              overtaken.add(ask);
            }
          });
      letters.removeAll(overtaken);
      letters.addFirst(stop);
      changed.signalAll();
      return overtaken;
    } finally {
      lock.unlock();
    }
  }

  void putFirst(Letter letter) {
    lock.lock();
    try {
      letters.addFirst(letter);
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** The next letter, or null when the wait is over. */
  Letter take(long nanos) throws InterruptedException {
    long left = nanos;
    lock.lockInterruptibly();
    try {
      while (letters.isEmpty()) {
        if (left <= 0) {
          return null;
        }
        left = changed.awaitNanos(left);
      }
      Letter letter = letters.pollFirst();
      if (letter instanceof Letter.Bytes b) {
        bytes -= b.data().length;
        changed.signalAll();
      }
      return letter;
    } finally {
      lock.unlock();
    }
  }

  /** Lets a reader that waits for room go, and drops what it brought: the line was closed. */
  void dropBytes() {
    lock.lock();
    try {
      letters.removeIf(l -> l instanceof Letter.Bytes || l instanceof Letter.Gone);
      bytes = 0;
      accepting = false;
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  void acceptBytes() {
    lock.lock();
    try {
      accepting = true;
    } finally {
      lock.unlock();
    }
  }
}
