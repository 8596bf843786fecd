package dev.gantrywright.link;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/** What waits for the thread that owns a line. A stop goes first. */
final class Mailbox {
  sealed interface Letter {
    record Ask(String command, CompletableFuture<Reply> reply) implements Letter {}

    record Stop(CompletableFuture<StopOutcome> outcome) implements Letter {}

    record Gone(Transport from, LinkException why) implements Letter {}

    /** Something has a deadline that the owner does not know yet. */
    record Look() implements Letter {}

    record Release() implements Letter {}

    record Close() implements Letter {}
  }

  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private final Deque<Letter> letters = new ArrayDeque<>();

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
      return letters.pollFirst();
    } finally {
      lock.unlock();
    }
  }
}
