package dev.gantrywright.link;

import java.time.Duration;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.LongSupplier;

/** How a session stands, who hears of it, and who waits for it. */
final class SessionStanding {
  private final String name;
  private final int baud;
  private final LongSupplier nanoTime;
  private final CopyOnWriteArrayList<SessionListener> listeners = new CopyOnWriteArrayList<>();
  private SessionState state = SessionState.OPENING;
  private String note = "";
  private LinkException failure;

  SessionStanding(String name, int baud, LongSupplier nanoTime) {
    this.name = name;
    this.baud = baud;
    this.nanoTime = nanoTime;
  }

  synchronized SessionState state() {
    return state;
  }

  synchronized String note() {
    return note;
  }

  AutoCloseable subscribe(SessionListener listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }

  void enter(SessionState next, String why) {
    synchronized (this) {
      state = next;
      note = why;
      notifyAll();
    }
    listeners.forEach(l -> l.state(next, why));
  }

  void heard(ReceivedLine line) {
    listeners.forEach(l -> l.heard(line));
  }

  void restarted(String banner) {
    listeners.forEach(l -> l.restarted(banner));
  }

  /** Remembers why the line could not be had, for those who wait for it; null when it was up. */
  synchronized void failed(LinkException why) {
    failure = why;
  }

  /**
   * Waits until the board has answered.
   *
   * @throws LinkException of kind SILENT when it does not in time; of another kind at once when the
   *     line is refused before the board has ever answered
   */
  synchronized void awaitUp(Duration patience) throws LinkException, InterruptedException {
    long end = nanoTime.getAsLong() + patience.toNanos();
    while (state != SessionState.UP) {
      if (failure != null
          && failure.kind() != LinkException.Kind.LOST
          && failure.kind() != LinkException.Kind.SILENT) {
        throw failure;
      }
      long left = end - nanoTime.getAsLong();
      if (left <= 0 || state == SessionState.CLOSED) {
        throw new LinkException(
            LinkException.Kind.SILENT,
            name
                + " is open but does not answer"
                + (note.isEmpty() ? "" : " (" + note + ")")
                + ": look at the baud rate ("
                + baud
                + "), the board's power and link.identityQuery");
      }
      wait(Math.max(1, left / 1_000_000));
    }
  }
}
