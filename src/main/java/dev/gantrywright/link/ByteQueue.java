package dev.gantrywright.link;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/** A bounded queue of bytes between two threads. The writer waits while it is full. */
public final class ByteQueue {
  private final byte[] ring;
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private int head;
  private int size;
  private boolean ended;

  /**
   * @param capacity how many bytes it holds before the writer has to wait
   */
  public ByteQueue(int capacity) {
    ring = new byte[capacity];
  }

  /**
   * Puts all bytes in, waiting for room.
   *
   * @return false when the queue ended before they fitted
   */
  public boolean put(byte[] bytes, int from, int count) throws InterruptedException {
    lock.lockInterruptibly();
    try {
      int done = 0;
      while (done < count) {
        while (size == ring.length && !ended) {
          changed.await();
        }
        if (ended) {
          return false;
        }
        int n = Math.min(count - done, ring.length - size);
        for (int i = 0; i < n; i++) {
          ring[(head + size + i) % ring.length] = bytes[from + done + i];
        }
        size += n;
        done += n;
        changed.signalAll();
      }
      return true;
    } finally {
      lock.unlock();
    }
  }

  /**
   * Takes what is there.
   *
   * @return how many bytes; 0 when none came in time; -1 when the queue has ended and is empty
   */
  public int take(byte[] into, Duration wait) throws InterruptedException {
    long left = Math.max(0, wait.toNanos());
    lock.lockInterruptibly();
    try {
      while (size == 0) {
        if (ended) {
          return -1;
        }
        if (left <= 0) {
          return 0;
        }
        left = changed.awaitNanos(left);
      }
      int n = Math.min(size, into.length);
      for (int i = 0; i < n; i++) {
        into[i] = ring[(head + i) % ring.length];
      }
      head = (head + n) % ring.length;
      size -= n;
      changed.signalAll();
      return n;
    } finally {
      lock.unlock();
    }
  }

  /** No more bytes will come; what is inside can still be taken. */
  public void end() {
    lock.lock();
    try {
      ended = true;
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** Waits until everything was taken, or the time is over. */
  boolean awaitEmpty(long time, TimeUnit unit) throws InterruptedException {
    long left = unit.toNanos(time);
    lock.lockInterruptibly();
    try {
      while (size > 0 && !ended) {
        if (left <= 0) {
          return false;
        }
        left = changed.awaitNanos(left);
      }
      return size == 0;
    } finally {
      lock.unlock();
    }
  }
}
