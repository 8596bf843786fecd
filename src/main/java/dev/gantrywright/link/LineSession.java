package dev.gantrywright.link;

import dev.gantrywright.link.Mailbox.Letter;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ThreadFactory;
import java.util.function.LongSupplier;

/**
 * One line to one machine, held open for this program alone and opened anew when it is lost. One
 * thread keeps the line and its deadlines, another reads it. All methods may be called from any
 * thread and none but {@link #awaitUp}, {@link #askAndWait} and {@link #close} waits. What is asked
 * while a reply is told, on the thread that tells it, goes out at once.
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
  private final Mailbox mailbox = new Mailbox();
  private final SessionStanding standing;
  private final Conversation talk;
  private final LineOwner owner;

  private LineSession(Parts parts, CommandGate gate, Transport first) {
    this.parts = parts;
    this.gate = gate;
    this.standing = new SessionStanding(parts.name(), parts.settings().baud(), parts.nanoTime());
    this.talk = new Conversation(parts, gate, standing);
    this.owner = new LineOwner(parts, mailbox, standing, talk, first);
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
    return standing.state();
  }

  /** Why the state is what it is; may be empty. */
  public String note() {
    return standing.note();
  }

  /** Adds a listener; closing the result takes it off again. */
  public AutoCloseable subscribe(SessionListener listener) {
    return standing.subscribe(listener);
  }

  /** Sends a command when its turn comes; the reply is completed in every case. */
  public CompletableFuture<Reply> ask(String command) {
    CompletableFuture<Reply> reply = new CompletableFuture<>();
    Letter.Ask ask = new Letter.Ask(command, reply);
    if (!talk.askedInTurn(ask)) {
      mailbox.put(ask);
      if (state() == SessionState.CLOSED) {
        reply.complete(Reply.lost(command, parts.name() + " is closed", now()));
      }
    }
    return reply;
  }

  /** The same, waiting. */
  public Reply askAndWait(String command) throws InterruptedException {
    try {
      return ask(command).get();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  /** Sends the stop command at once, ahead of everything that waits, and disarms the line. */
  public CompletableFuture<StopOutcome> stop() {
    gate.disarm();
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
    standing.awaitUp(patience);
  }

  /** Gives the port up at once and ends; waits for the driver no longer than the timing says. */
  @Override
  public void close() {
    owner.close();
  }

  private long now() {
    return parts.nanoTime().getAsLong();
  }
}
