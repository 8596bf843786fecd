package dev.gantrywright.link;

import dev.gantrywright.link.Mailbox.Letter;
import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/**
 * The thread that opens a session's line, keeps its deadlines, opens it anew when it is lost, and
 * closes it. Another thread reads each line that is opened.
 */
final class LineOwner {
  private static final long LONGEST_SLEEP_NANOS = 200_000_000L;

  private final LineSession.Parts parts;
  private final Mailbox mailbox;
  private final SessionStanding standing;
  private final Conversation talk;
  private final Thread thread;
  private volatile boolean closing;
  private Transport transport;
  private boolean released;

  LineOwner(
      LineSession.Parts parts,
      Mailbox mailbox,
      SessionStanding standing,
      Conversation talk,
      Transport first) {
    this.parts = parts;
    this.mailbox = mailbox;
    this.standing = standing;
    this.talk = talk;
    this.transport = first;
    this.thread = daemon("line", this::run);
  }

  void start() {
    thread.start();
  }

  void close() {
    closing = true;
    mailbox.putFirst(new Letter.Close());
    try {
      thread.join(parts.timing().closeWithin().toMillis() + 1_000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Thread daemon(String what, Runnable work) {
    Thread made = parts.threads().newThread(work);
    made.setName(what + " " + parts.name());
    made.setDaemon(true);
    return made;
  }

  private void run() {
    try {
      while (!closing) {
        if (transport == null) {
          reopen();
        } else {
          serve();
        }
      }
    } catch (InterruptedException e) {
      closing = true;
    } finally {
      drop("closed");
      standing.enter(SessionState.CLOSED, "");
      refuseAllMail();
    }
  }

  private void serve() throws InterruptedException {
    Transport open = transport;
    talk.begin(open);
    Thread reader = daemon("reader", () -> read(open));
    reader.start();
    LinkException gone = null;
    while (!closing && !released) {
      long sleep = talk.tick(LONGEST_SLEEP_NANOS);
      gone = talk.gone();
      if (gone != null) {
        break;
      }
      Letter letter = mailbox.take(sleep);
      if (letter != null) {
        deliver(letter);
      }
      Duration idle = parts.timing().idleRelease();
      released |= !idle.isZero() && talk.idleFor(idle);
    }
    standing.failed(talk.wasUp() ? null : gone);
    drop(gone == null ? "released" : gone.getMessage());
    reader.join(1_000);
  }

  private void read(Transport from) {
    ReadingPace pace = new ReadingPace(parts.nanoTime(), LockSupport::parkNanos);
    try {
      from.receive(
          (bytes, count) -> {
            pace.takes();
            if (count > 0 && talk.received(from, bytes, count)) {
              mailbox.put(new Letter.Look());
            }
            pace.took(count);
            return !closing;
          });
    } catch (LinkException e) {
      mailbox.put(new Letter.Gone(from, e));
    }
  }

  private void deliver(Letter letter) {
    if (letter instanceof Letter.Ask a) {
      talk.ask(a);
    } else if (letter instanceof Letter.Stop s) {
      talk.stop(s.outcome());
    } else if (letter instanceof Letter.Gone g) {
      talk.gone(g.from(), g.why());
    } else if (letter instanceof Letter.Release) {
      released = true;
    }
  }

  /** Tries to open the line again, waiting longer each time; serves the mail meanwhile. */
  private void reopen() throws InterruptedException {
    Duration wait = parts.timing().firstBackOff();
    Duration longest = parts.timing().longestBackOff();
    int tries = 0;
    while (!closing && transport == null) {
      if (released) {
        standing.enter(SessionState.RELEASED, "another program can use the port");
        awaitDemand();
        continue;
      }
      if (waitOut(wait)) {
        return;
      }
      tries++;
      try {
        transport = parts.connector().open(parts.settings());
      } catch (LinkException e) {
        standing.failed(talk.wasUp() ? null : e);
        standing.enter(SessionState.OPENING, "attempt " + tries + ": " + e.getMessage());
      }
      Duration twice = wait.multipliedBy(2);
      wait = twice.compareTo(longest) > 0 ? longest : twice;
    }
  }

  private void awaitDemand() throws InterruptedException {
    Letter letter = mailbox.take(1_000_000_000L);
    if (letter instanceof Letter.Ask a) {
      talk.ask(a);
      released = false;
    } else if (letter instanceof Letter.Stop s) {
      s.outcome().complete(new StopOutcome(false, "", 0));
    }
  }

  /** Waits between attempts, answering commands with what is the matter; true when closing. */
  private boolean waitOut(Duration wait) throws InterruptedException {
    long end = now() + wait.toNanos();
    while (!closing) {
      long left = end - now();
      if (left <= 0) {
        return false;
      }
      Letter letter = mailbox.take(left);
      refuse(letter, parts.name() + " is not connected");
      if (letter instanceof Letter.Release) {
        released = true;
        return false;
      }
    }
    return true;
  }

  private void drop(String why) {
    Transport closingNow = talk.letGo();
    // A line that was opened while the session was being closed has not been talked on yet.
    closingNow = closingNow == null ? transport : closingNow;
    transport = null;
    String note = why;
    if (closingNow != null) {
      Thread closer = daemon("close", closingNow::close);
      closer.start();
      try {
        closer.join(parts.timing().closeWithin().toMillis());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      if (closer.isAlive()) {
        note += "; the driver has not given the port up yet";
      }
    }
    talk.end(note);
    if (!closing && !released) {
      standing.enter(SessionState.OPENING, note);
    }
  }

  private void refuseAllMail() {
    String why = parts.name() + " is closed";
    talk.takeDeferred().forEach(ask -> refuse(ask, why));
    try {
      for (Letter letter = mailbox.take(0); letter != null; letter = mailbox.take(0)) {
        refuse(letter, why);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void refuse(Letter letter, String why) {
    if (letter instanceof Letter.Ask a) {
      a.reply().complete(Reply.lost(a.command(), why, now()));
    } else if (letter instanceof Letter.Stop s) {
      s.outcome().complete(new StopOutcome(false, "", 0));
    }
  }

  private long now() {
    return parts.nanoTime().getAsLong();
  }
}
