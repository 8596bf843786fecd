package dev.gantrywright.app;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Proof;
import dev.gantrywright.prove.ProofReport;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Proves many machines, each over its own line, a bounded number at once. A board that is silent,
 * busy, gone or talks without end costs its own time and no other board's: after {@code longest} it
 * is given up, whatever it was doing.
 *
 * @param atOnce most lines open at the same time; three threads each
 * @param longest time for one board, from opening its line to the last answer
 * @param threads makes the threads
 */
public record ManyProofs(int atOnce, Duration longest, ThreadFactory threads) {
  /** Enough for a workshop, and few enough for a small computer. */
  public static final int USUAL_AT_ONCE = 32;

  private static final Duration START_PATIENCE = Duration.ofSeconds(12);
  private static final long LOOK_NANOS = 100_000_000L;

  /**
   * One machine to prove.
   *
   * @param name what the outcome is called
   * @param touched axis ends that the parked machine touches
   * @param identity what the firmware must say of itself: what it is, to the text
   * @param recorded what the record says that the firmware was given to say
   */
  public record Board(
      String name,
      PrinterProfile profile,
      PortAddress port,
      Set<String> touched,
      Map<String, String> identity,
      Map<String, String> recorded) {
    public Board {
      touched = Set.copyOf(touched);
      identity = Map.copyOf(identity);
      recorded = Map.copyOf(recorded);
    }

    /** With nothing on record. */
    public Board(
        String name,
        PrinterProfile profile,
        PortAddress port,
        Set<String> touched,
        Map<String, String> identity) {
      this(name, profile, port, touched, identity, Map.of());
    }

    /** Parked off its switches, whatever its identity. */
    public Board(String name, PrinterProfile profile, PortAddress port) {
      this(name, profile, port, Set.of(), Map.of());
    }
  }

  /**
   * What came of one board.
   *
   * @param report null where the machine could not be asked
   * @param trouble why not, one line; empty where there is a report
   * @param took from opening the line to the end
   */
  public record Outcome(Board board, ProofReport report, String trouble, Duration took) {
    public boolean passed() {
      return report != null && report.passed();
    }
  }

  public ManyProofs {
    if (atOnce < 1 || longest.isNegative() || longest.isZero()) {
      throw new IllegalArgumentException(
          "at once " + atOnce + ", longest " + longest + ": both must be above zero");
    }
  }

  /** The usual number at once, half a minute each. */
  public static ManyProofs usual() {
    return new ManyProofs(USUAL_AT_ONCE, Duration.ofSeconds(30), Thread::new);
  }

  /**
   * Proves all boards and returns when each has an outcome.
   *
   * @param sink receives each outcome when it is known, on the calling thread
   * @param cancelled asked ten times a second; true gives up what is under way and leaves out the
   *     rest, with an outcome that says so
   * @return the outcomes in the order of the boards
   * @throws InterruptedException after everything was given up
   */
  public List<Outcome> run(List<Board> boards, Consumer<Outcome> sink, BooleanSupplier cancelled)
      throws InterruptedException {
    Outcome[] outcomes = new Outcome[boards.size()];
    BlockingQueue<Attempt> ended = new LinkedBlockingQueue<>();
    Set<Attempt> running = new LinkedHashSet<>();
    Deque<Attempt> waiting = new ArrayDeque<>();
    for (int i = 0; i < boards.size(); i++) {
      waiting.add(new Attempt(i, boards.get(i), ended));
    }
    Consumer<Attempt> settle =
        attempt -> {
          outcomes[attempt.index] = attempt.outcome;
          sink.accept(attempt.outcome);
        };
    try {
      while (!running.isEmpty() || !waiting.isEmpty()) {
        if (cancelled.getAsBoolean()) {
          giveUp(running, a -> true, a -> "cancelled", settle);
          giveUp(waiting, a -> true, a -> "not asked: cancelled", settle);
          break;
        }
        while (running.size() < atOnce && !waiting.isEmpty()) {
          Attempt next = waiting.removeFirst();
          running.add(next);
          next.start(threads);
        }
        Attempt done = ended.poll(LOOK_NANOS, TimeUnit.NANOSECONDS);
        if (done != null && running.remove(done)) {
          settle.accept(done);
        }
        giveUp(
            running,
            a -> a.age() > longest.toNanos(),
            a -> "given up after " + longest.toSeconds() + " s: " + a.standing(),
            settle);
      }
      return List.of(outcomes);
    } finally {
      running.forEach(Attempt::interrupt);
    }
  }

  private static void giveUp(
      java.util.Collection<Attempt> attempts,
      java.util.function.Predicate<Attempt> which,
      Function<Attempt, String> why,
      Consumer<Attempt> settle) {
    for (Attempt attempt : List.copyOf(attempts)) {
      if (which.test(attempt)) {
        attempts.remove(attempt);
        attempt.interrupt();
        attempt.trouble(attempt.board.port() + ": " + why.apply(attempt));
        settle.accept(attempt);
      }
    }
  }

  /** One board on a thread of its own; when it is given up nobody looks at what it finds. */
  private static final class Attempt {
    private final int index;
    private final Board board;
    private final BlockingQueue<Attempt> ended;
    private Thread thread;
    private long began;
    private Outcome outcome;
    private volatile LineSession line;
    private volatile boolean up;

    Attempt(int index, Board board, BlockingQueue<Attempt> ended) {
      this.index = index;
      this.board = board;
      this.ended = ended;
    }

    void start(ThreadFactory threads) {
      began = System.nanoTime();
      thread = threads.newThread(this::prove);
      thread.setName("prove " + board.name());
      thread.setDaemon(true);
      thread.start();
    }

    long age() {
      return System.nanoTime() - began;
    }

    void interrupt() {
      if (thread != null) {
        thread.interrupt();
      }
    }

    /** How far it has come, for whoever gives it up. */
    String standing() {
      LineSession open = line;
      if (up) {
        return "the board keeps the line busy";
      }
      if (open == null) {
        return "the line is still being opened";
      }
      String note = open.note();
      return "it does not answer" + (note.isEmpty() ? "" : " (" + note + ")");
    }

    void trouble(String why) {
      outcome = outcome(null, why);
    }

    private Outcome outcome(ProofReport report, String trouble) {
      Duration took = thread == null ? Duration.ZERO : Duration.ofNanos(age());
      return new Outcome(board, report, trouble, took);
    }

    private void prove() {
      Outcome found;
      try (LineSession session = Connecting.forOneProof(board.profile(), board.port())) {
        line = session;
        session.awaitUp(START_PATIENCE);
        up = true;
        found =
            outcome(
                Proof.of(
                    board.profile(), session, board.touched(), board.identity(), board.recorded()),
                "");
      } catch (LinkException | IllegalArgumentException e) {
        found = outcome(null, e.getMessage());
      } catch (InterruptedException e) {
        return;
      } catch (RuntimeException e) {
        // A programmer's error over one board must not take the others' outcomes away.
        found = outcome(null, board.port() + ": internal error (" + e + ")");
      }
      if (!Thread.currentThread().isInterrupted()) {
        outcome = found;
        ended.add(this);
      }
    }
  }
}
