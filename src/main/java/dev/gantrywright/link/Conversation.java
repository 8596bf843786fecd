package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import dev.gantrywright.link.Mailbox.Letter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The protocol on the line that is open now. The thread that reads the line talks here too, so that
 * the next question leaves on the heels of the answer; whoever holds {@link #turn} may speak. A
 * write that a dead driver does not give back is cut off by closing the line under it.
 */
final class Conversation implements LineProtocol.Peer {
  /** A write that takes longer means that the device is dead. */
  private static final long TURN_SECONDS = 5;

  private final LineSession.Parts parts;
  private final CommandGate gate;
  private final SessionStanding standing;
  private final LineProtocol protocol;
  // Fair: a machine that talks without end must not keep a stop waiting.
  private final ReentrantLock turn = new ReentrantLock(true);
  private final List<Letter.Ask> deferred = new ArrayList<>();
  private volatile Transport line;
  private volatile boolean wasUp;
  private LinkException gone;
  private boolean synced;
  private long syncEnd;
  private String telling = "";
  private long lastUse;
  private long ownerWakes;

  Conversation(LineSession.Parts parts, CommandGate gate, SessionStanding standing) {
    this.parts = parts;
    this.gate = gate;
    this.standing = standing;
    this.protocol = new LineProtocol(parts.dialect(), gate, this);
  }

  /** Begins on a line that has just been opened: asks until the board answers. */
  void begin(Transport opened) {
    take();
    try {
      line = opened;
      gone = null;
      synced = false;
      telling = "";
      protocol.freshLine();
      standing.enter(SessionState.SYNCING, "");
      long now = now();
      syncEnd = now + parts.timing().syncFor().toNanos();
      lastUse = now;
      askForLife(now);
    } finally {
      turn.unlock();
    }
  }

  boolean wasUp() {
    return wasUp;
  }

  /**
   * Takes what the line brought, on the reading thread.
   *
   * @return true when the owner has to look: it sleeps past the next deadline, or the line is gone
   */
  boolean received(Transport from, byte[] bytes, int count) {
    long at = now();
    parts.log().record(Direction.RECEIVED, bytes, count, at);
    take();
    try {
      if (from != line) {
        return false;
      }
      protocol.received(bytes, count, at);
      return gone != null || at + protocol.nanosToTick(at) - ownerWakes < 0;
    } finally {
      turn.unlock();
    }
  }

  /** Lets time pass and says how long the owner may sleep; never longer than {@code most}. */
  long tick(long most) {
    take();
    try {
      long now = now();
      protocol.tick(now);
      if (!synced && gone == null && now - syncEnd >= 0) {
        String why = standing.note();
        gone = new LinkException(LinkException.Kind.SILENT, why.isEmpty() ? "no answer" : why);
      }
      long sleep = gone != null ? 0 : Math.min(protocol.nanosToTick(now), most);
      ownerWakes = now + sleep;
      return sleep;
    } finally {
      turn.unlock();
    }
  }

  /** Why the line is no longer any good; null while it is. */
  LinkException gone() {
    take();
    try {
      return gone;
    } finally {
      turn.unlock();
    }
  }

  void gone(Transport from, LinkException why) {
    take();
    try {
      gone = from == line ? why : gone;
    } finally {
      turn.unlock();
    }
  }

  /**
   * Asks at once where the calling thread has the turn, as it has while a reply is told.
   *
   * @return false when it has not, or the line is not up: the owner must take it
   */
  boolean askedInTurn(Letter.Ask ask) {
    if (!turn.isHeldByCurrentThread() || line == null || gone != null || !synced) {
      return false;
    }
    ask(ask);
    return true;
  }

  /** Asks, or keeps the question until the board has answered for the first time. */
  void ask(Letter.Ask ask) {
    take();
    try {
      lastUse = now();
      if (synced) {
        protocol.submit(ask.command(), ask.reply(), lastUse);
      } else {
        deferred.add(ask);
      }
    } finally {
      turn.unlock();
    }
  }

  void stop(CompletableFuture<StopOutcome> outcome) {
    take();
    try {
      protocol.stop(outcome, now());
    } finally {
      turn.unlock();
    }
  }

  /** True when nothing was asked for so long and nothing is under way. */
  boolean idleFor(Duration time) {
    take();
    try {
      return synced && protocol.idle() && now() - lastUse >= time.toNanos();
    } finally {
      turn.unlock();
    }
  }

  /** Nothing more goes to this line; the owner then closes it. */
  Transport letGo() {
    gate.disarm();
    return line;
  }

  /** The line is closed: everything that waits for it is told so. */
  void end(String why) {
    take();
    try {
      line = null;
      synced = false;
      protocol.lost(why, now());
    } finally {
      turn.unlock();
    }
  }

  /** What was asked before the board ever answered. */
  List<Letter.Ask> takeDeferred() {
    take();
    try {
      List<Letter.Ask> all = List.copyOf(deferred);
      deferred.clear();
      return all;
    } finally {
      turn.unlock();
    }
  }

  private void askForLife(long now) {
    Dialect d = parts.dialect();
    String question = d.identityQuery().isBlank() ? d.endstopQuery() : d.identityQuery();
    CompletableFuture<Reply> reply = new CompletableFuture<>();
    reply.thenAccept(this::lifeSign);
    protocol.submit(question, reply, parts.timing().askEvery().toNanos(), now);
  }

  private void lifeSign(Reply reply) {
    switch (reply.outcome()) {
      case ANSWERED, FAILED -> {
        synced = true;
        wasUp = true;
        standing.enter(SessionState.UP, "");
        takeDeferred().forEach(a -> protocol.submit(a.command(), a.reply(), now()));
      }
      case TIMED_OUT, RESTARTED, STOPPED -> {
        // Noise heard once says more about the line than the silence after it.
        telling =
            telling.isEmpty() || !reply.note().equals(LineProtocol.NO_ANSWER)
                ? reply.note()
                : telling;
        standing.enter(SessionState.SYNCING, telling);
        askForLife(now());
      }
      case REFUSED -> gone = new LinkException(LinkException.Kind.SILENT, reply.note());
      case LOST -> {}
    }
  }

  /** Takes the turn; closes the line under a writer that does not come back. */
  private void take() {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          if (turn.tryLock(TURN_SECONDS, TimeUnit.SECONDS)) {
            return;
          }
          cutOff();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private void cutOff() {
    Transport stuck = line;
    if (stuck != null) {
      Thread closer = parts.threads().newThread(stuck::close);
      closer.setName("cut off " + parts.name());
      closer.setDaemon(true);
      closer.start();
    }
  }

  private long now() {
    return parts.nanoTime().getAsLong();
  }

  @Override
  public void send(byte[] bytes) {
    if (line == null || gone != null) {
      return;
    }
    parts.log().record(Direction.SENT, bytes, bytes.length, now());
    try {
      line.write(bytes);
    } catch (LinkException e) {
      gone = e;
    }
  }

  @Override
  public void heard(ReceivedLine received) {
    standing.heard(received);
  }

  @Override
  public void restarted(String banner) {
    gate.disarm();
    standing.restarted(banner);
  }

  @Override
  public void silent(String why) {
    if (synced) {
      gone = new LinkException(LinkException.Kind.SILENT, why);
    }
  }
}
