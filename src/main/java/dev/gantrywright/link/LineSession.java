package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import dev.gantrywright.link.Mailbox.Letter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ThreadFactory;
import java.util.function.LongSupplier;

/**
 * One line to one machine, held open for this program alone and opened anew when it is lost. One
 * thread owns the protocol; another only reads. All methods may be called from any thread and none
 * but {@link #awaitUp}, {@link #askAndWait} and {@link #close} waits.
 */
public final class LineSession implements AutoCloseable {
  /**
   * What a session is made of.
   *
   * @param name what the user calls the line
   * @param connector opens it
   * @param settings baud rate and framing
   * @param dialect what is said on it
   * @param commands which command does what
   * @param timing how patient to be
   * @param log receives every byte; the caller closes it
   * @param nanoTime the monotonic clock
   * @param threads makes the session's threads
   */
  public record Parts(
      String name,
      Connector connector,
      SerialSettings settings,
      Dialect dialect,
      CommandTable commands,
      SessionTiming timing,
      ByteLog log,
      LongSupplier nanoTime,
      ThreadFactory threads) {}

  private final Parts parts;
  private final CommandGate gate;
  private final LineProtocol protocol;
  private final Mailbox mailbox = new Mailbox();
  private final CopyOnWriteArrayList<SessionListener> listeners = new CopyOnWriteArrayList<>();
  private final List<Letter.Ask> deferred = new ArrayList<>();
  private final Thread owner;
  private final Object stateLock = new Object();

  private SessionState state = SessionState.OPENING;
  private String note = "";
  private LinkException failure;
  private volatile boolean closing;
  private Transport transport;
  private LinkException gone;
  private boolean synced;
  private boolean wasUp;
  private boolean released;
  private long syncEnd;
  private long lastUse;

  private LineSession(Parts parts, CommandGate gate, Transport first) {
    this.parts = parts;
    this.gate = gate;
    this.protocol = new LineProtocol(parts.dialect(), gate, new Wire());
    this.transport = first;
    this.owner = parts.threads().newThread(this::run);
    owner.setName("line " + parts.name());
    owner.setDaemon(true);
  }

  /**
   * Opens the line and begins to ask until the board answers; {@link #awaitUp} waits for that.
   *
   * @throws LinkException when the line cannot be opened at all
   * @throws IllegalArgumentException when the dialect's questions are no questions
   */
  public static LineSession open(Parts parts) throws LinkException {
    CommandGate gate = new CommandGate(parts.commands(), parts.dialect());
    Transport first = parts.connector().open(parts.settings());
    try {
      LineSession session = new LineSession(parts, gate, first);
      session.owner.start();
      return session;
    } catch (RuntimeException e) {
      first.close();
      throw e;
    }
  }

  public String name() {
    return parts.name();
  }

  public ByteLog log() {
    return parts.log();
  }

  public Dialect dialect() {
    return parts.dialect();
  }

  public SessionState state() {
    synchronized (stateLock) {
      return state;
    }
  }

  /** Why the state is what it is; may be empty. */
  public String note() {
    synchronized (stateLock) {
      return note;
    }
  }

  /** Adds a listener; closing the result takes it off again. */
  public AutoCloseable subscribe(SessionListener listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }

  /** Sends a command when its turn comes; the reply is completed in every case. */
  public CompletableFuture<Reply> ask(String command) {
    CompletableFuture<Reply> reply = new CompletableFuture<>();
    mailbox.put(new Letter.Ask(command, reply));
    if (state() == SessionState.CLOSED) {
      reply.complete(lostReply(command, parts.name() + " is closed"));
    }
    return reply;
  }

  /** The same, waiting. */
  public Reply askAndWait(String command) throws InterruptedException {
    try {
      return ask(command).get();
    } catch (java.util.concurrent.ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  /** Sends the stop command at once, ahead of everything that waits. */
  public CompletableFuture<StopOutcome> stop() {
    CompletableFuture<StopOutcome> outcome = new CompletableFuture<>();
    for (Letter.Ask overtaken : mailbox.overtake(new Letter.Stop(outcome))) {
      overtaken
          .reply()
          .complete(
              new Reply(
                  overtaken.command(),
                  Reply.Outcome.STOPPED,
                  List.of(),
                  "a stop overtook it",
                  0,
                  now()));
    }
    if (state() == SessionState.CLOSED) {
      outcome.complete(new StopOutcome(false, "", 0));
    }
    return outcome;
  }

  /** What a command would do. */
  public CommandKind kindOf(String command) {
    return gate.kindOf(command);
  }

  /** Lets moving, heating and writing commands through until the line is lost or disarmed. */
  public void arm() {
    gate.arm();
  }

  public void disarm() {
    gate.disarm();
  }

  public boolean armed() {
    return gate.armed();
  }

  /** Gives the port up until the next command, so that another program can use it. */
  public void release() {
    mailbox.put(new Letter.Release());
  }

  /**
   * Waits until the board has answered.
   *
   * @throws LinkException of kind SILENT when it does not in time; of another kind at once when the
   *     line is refused before the board has ever answered
   */
  public void awaitUp(Duration patience) throws LinkException, InterruptedException {
    long end = parts.nanoTime().getAsLong() + patience.toNanos();
    synchronized (stateLock) {
      while (state != SessionState.UP) {
        if (failure != null
            && failure.kind() != LinkException.Kind.LOST
            && failure.kind() != LinkException.Kind.SILENT) {
          throw failure;
        }
        long left = end - parts.nanoTime().getAsLong();
        if (left <= 0 || state == SessionState.CLOSED) {
          throw new LinkException(
              LinkException.Kind.SILENT,
              parts.name()
                  + " is open but does not answer"
                  + (note.isEmpty() ? "" : " (" + note + ")")
                  + ": look at the baud rate ("
                  + parts.settings().baud()
                  + "), the board's power and link.identityQuery");
        }
        stateLock.wait(Math.max(1, left / 1_000_000));
      }
    }
  }

  /** Gives the port up at once and ends; waits for the driver no longer than the timing says. */
  @Override
  public void close() {
    closing = true;
    mailbox.putFirst(new Letter.Close());
    try {
      owner.join(parts.timing().closeWithin().toMillis() + 1_000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
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
      enter(SessionState.CLOSED, "");
      refuseAllMail();
    }
  }

  private void serve() throws InterruptedException {
    gone = null;
    synced = false;
    protocol.freshLine();
    mailbox.acceptBytes();
    Transport open = transport;
    Thread reader = parts.threads().newThread(() -> pump(open));
    reader.setName("reader " + parts.name());
    reader.setDaemon(true);
    reader.start();
    enter(SessionState.SYNCING, "");
    long now = now();
    syncEnd = now + parts.timing().syncFor().toNanos();
    lastUse = now;
    askForLife(now);
    while (!closing && gone == null && !released) {
      now = now();
      Letter letter = mailbox.take(Math.min(protocol.nanosToTick(now), 200_000_000L));
      now = now();
      if (letter != null) {
        deliver(letter, now);
      }
      protocol.tick(now);
      if (!synced && gone == null && now - syncEnd >= 0) {
        gone =
            new LinkException(LinkException.Kind.SILENT, note().isEmpty() ? "no answer" : note());
      }
      releaseWhenIdle(now);
    }
    fail(gone);
    drop(gone == null ? "released" : gone.getMessage());
    reader.join(1_000);
  }

  private void pump(Transport from) {
    byte[] buffer = new byte[4096];
    try {
      while (!closing) {
        int n = from.read(buffer, Duration.ofMillis(100));
        if (n > 0) {
          long at = now();
          parts.log().record(Direction.RECEIVED, buffer, n, at);
          if (!mailbox.putBytes(from, java.util.Arrays.copyOf(buffer, n), at)) {
            return;
          }
        }
      }
    } catch (LinkException e) {
      mailbox.put(new Letter.Gone(from, e));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void deliver(Letter letter, long now) {
    if (letter instanceof Letter.Bytes b) {
      if (b.from() == transport) {
        protocol.received(b.data(), b.data().length, b.nanos());
      }
    } else if (letter instanceof Letter.Ask a) {
      lastUse = now;
      if (synced) {
        protocol.submit(a.command(), a.reply(), now);
      } else {
        deferred.add(a);
      }
    } else if (letter instanceof Letter.Stop s) {
      protocol.stop(s.outcome(), now);
    } else if (letter instanceof Letter.Gone g) {
      gone = g.from() == transport ? g.why() : gone;
    } else if (letter instanceof Letter.Release) {
      released = true;
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
        enter(SessionState.UP, "");
        List<Letter.Ask> waiting = List.copyOf(deferred);
        deferred.clear();
        waiting.forEach(a -> protocol.submit(a.command(), a.reply(), now()));
      }
      case TIMED_OUT, RESTARTED, STOPPED -> {
        enter(SessionState.SYNCING, reply.note());
        askForLife(now());
      }
      case REFUSED -> gone = new LinkException(LinkException.Kind.SILENT, reply.note());
      case LOST -> {}
    }
  }

  private void releaseWhenIdle(long now) {
    long idle = parts.timing().idleRelease().toNanos();
    if (idle > 0 && synced && protocol.idle() && now - lastUse >= idle) {
      released = true;
    }
  }

  /** Tries to open the line again, waiting longer each time; serves the mail meanwhile. */
  private void reopen() throws InterruptedException {
    Duration wait = parts.timing().firstBackOff();
    int tries = 0;
    while (!closing && transport == null) {
      if (released) {
        enter(SessionState.RELEASED, "another program can use the port");
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
        fail(e);
        enter(SessionState.OPENING, "attempt " + tries + ": " + e.getMessage());
      }
      wait =
          wait.multipliedBy(2).compareTo(parts.timing().longestBackOff()) > 0
              ? parts.timing().longestBackOff()
              : wait.multipliedBy(2);
    }
  }

  /** Remembers why the line could not be had, for those who wait for it the first time. */
  private void fail(LinkException why) {
    synchronized (stateLock) {
      failure = wasUp ? null : why;
    }
  }

  private void awaitDemand() throws InterruptedException {
    Letter letter = mailbox.take(1_000_000_000L);
    if (letter instanceof Letter.Ask a) {
      deferred.add(a);
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
      if (letter instanceof Letter.Ask a) {
        a.reply().complete(lostReply(a.command(), parts.name() + " is not connected"));
      } else if (letter instanceof Letter.Stop s) {
        s.outcome().complete(new StopOutcome(false, "", 0));
      } else if (letter instanceof Letter.Release) {
        released = true;
        return false;
      }
    }
    return true;
  }

  private void drop(String why) {
    gate.disarm();
    Transport closingNow = transport;
    transport = null;
    if (closingNow != null) {
      mailbox.dropBytes();
      Thread closer = parts.threads().newThread(closingNow::close);
      closer.setName("close " + parts.name());
      closer.setDaemon(true);
      closer.start();
      try {
        closer.join(parts.timing().closeWithin().toMillis());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      if (closer.isAlive()) {
        why = why + "; the driver has not given the port up yet";
      }
    }
    protocol.lost(why, now());
    if (!closing && !released) {
      enter(SessionState.OPENING, why);
    }
  }

  private void refuseAllMail() throws RuntimeException {
    deferred.forEach(a -> a.reply().complete(lostReply(a.command(), parts.name() + " is closed")));
    deferred.clear();
    try {
      for (Letter letter = mailbox.take(0); letter != null; letter = mailbox.take(0)) {
        if (letter instanceof Letter.Ask a) {
          a.reply().complete(lostReply(a.command(), parts.name() + " is closed"));
        } else if (letter instanceof Letter.Stop s) {
          s.outcome().complete(new StopOutcome(false, "", 0));
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Reply lostReply(String command, String why) {
    return new Reply(command, Reply.Outcome.LOST, List.of(), why, 0, now());
  }

  private void enter(SessionState next, String why) {
    synchronized (stateLock) {
      state = next;
      note = why;
      stateLock.notifyAll();
    }
    listeners.forEach(l -> l.state(next, why));
  }

  private long now() {
    return parts.nanoTime().getAsLong();
  }

  /** Where the protocol's bytes go. */
  private final class Wire implements LineProtocol.Peer {
    @Override
    public void send(byte[] bytes) {
      if (transport == null || gone != null) {
        return;
      }
      parts.log().record(Direction.SENT, bytes, bytes.length, now());
      try {
        transport.write(bytes);
      } catch (LinkException e) {
        gone = e;
      }
    }

    @Override
    public void heard(ReceivedLine line) {
      listeners.forEach(l -> l.heard(line));
    }

    @Override
    public void restarted(String banner) {
      gate.disarm();
      listeners.forEach(l -> l.restarted(banner));
    }

    @Override
    public void silent(String why) {
      if (synced) {
        gone = new LinkException(LinkException.Kind.SILENT, why);
      }
    }
  }
}
