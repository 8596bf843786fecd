package dev.gantrywright.link;

import dev.gantrywright.link.Reply.Outcome;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * One command in flight, its reply read to the acknowledgement; nothing here waits, reads a clock
 * or knows a thread. The owner feeds bytes and the time, and calls {@link #tick} when {@link
 * #nanosToTick} is over.
 */
public final class LineProtocol {
  /** Silent commands in a row after which the line counts as lost. */
  public static final int MISSES = 3;

  /** What is said of a command to which nothing at all came back. */
  static final String NO_ANSWER = "no answer";

  private static final int RESENDS = 5;
  private static final int LONGEST_REPLY = 2_000;

  /** The other side: where bytes go and what is heard between replies. */
  public interface Peer {
    void send(byte[] bytes);

    /** A line that answers no command. */
    void heard(ReceivedLine line);

    /** The board has started anew; nothing that it was told still counts. */
    void restarted(String banner);

    /** So many commands in a row went unanswered. */
    void silent(String why);
  }

  private record Pending(String command, CompletableFuture<Reply> reply, long waitNanos) {}

  private final Dialect dialect;
  private final CommandGate gate;
  private final Peer peer;
  private final LineSplitter splitter;
  private final Deque<Pending> queue = new ArrayDeque<>();
  private final NumberedLines numbers;

  private Pending current;
  private String sentText = "";
  private long sentAt;
  private long deadline;
  private List<String> lines = new ArrayList<>();
  private boolean failed;
  private boolean echoed;
  private int resends;
  private int garbage;
  private long settleAt;
  private boolean settling;
  private boolean held;
  private List<String> heldLines = List.of();
  private int owed;
  private int misses;

  private boolean draining;
  private long quietAt;
  private long drainEnd;

  private CompletableFuture<StopOutcome> stopping;
  private long stopSentAt;

  public LineProtocol(Dialect dialect, CommandGate gate, Peer peer) {
    this.dialect = dialect;
    this.gate = gate;
    this.peer = peer;
    this.splitter = new LineSplitter(dialect.longestLine(), this::line);
    this.numbers = new NumberedLines(dialect.lineNumbers());
  }

  /** Queues a command; its reply is completed in every case, never exceptionally. */
  public void submit(String command, CompletableFuture<Reply> reply, long now) {
    submit(command, reply, dialect.replyNanos(), now);
  }

  /** The same with a patience of its own, in nanoseconds. */
  void submit(String command, CompletableFuture<Reply> reply, long waitNanos, long now) {
    if (gate.judge(command) instanceof CommandGate.Verdict.Refused refused) {
      reply.complete(new Reply(command, Outcome.REFUSED, List.of(), refused.reason(), 0, now));
      return;
    }
    queue.addLast(new Pending(command, reply, waitNanos));
    pump(now);
  }

  /** Sends the stop command at once, ahead of everything, and gives up all that waits. */
  public void stop(CompletableFuture<StopOutcome> outcome, long now) {
    CompletableFuture<StopOutcome> earlier = stopping;
    long earlierSentAt = stopSentAt;
    stopping = outcome;
    stopSentAt = now;
    draining = false;
    peer.send(Framing.afterBreak(dialect.stop()));
    // Told last: whoever hears of it and asks again at once comes behind the stop.
    settleAll(Outcome.STOPPED, "a stop overtook it", now);
    if (earlier != null) {
      earlier.complete(new StopOutcome(false, "", now - earlierSentAt));
    }
  }

  /** The line has gone: everything that waits is told so. */
  public void lost(String why, long now) {
    settleAll(Outcome.LOST, why, now);
    if (stopping != null) {
      stopping.complete(new StopOutcome(false, "", now - stopSentAt));
      stopping = null;
    }
    splitter.reset();
    draining = false;
    owed = 0;
    misses = 0;
    numbers.restart();
  }

  /** Takes bytes as they arrive. */
  public void received(byte[] bytes, int count, long now) {
    if (draining) {
      quietAt = now + dialect.quietNanos();
    }
    splitter.feed(bytes, count, now);
    if (settling && splitter.inLine() && !held) {
      settleAt = now + dialect.quietNanos();
    }
    tick(now);
  }

  /** Lets time pass: time-outs, ends of silence, the next command. */
  public void tick(long now) {
    if (stopping != null && now - stopSentAt >= dialect.replyNanos()) {
      stopping.complete(new StopOutcome(false, "", now - stopSentAt));
      stopping = null;
    }
    if (current != null && settling && now - settleAt >= 0) {
      if (splitter.inLine() && !held) {
        splitter.flush(now);
      }
      if (current != null) {
        settle(failed ? Outcome.FAILED : Outcome.ANSWERED, now);
      }
    }
    if (current != null && now - deadline >= 0) {
      timedOut(now);
    }
    if (draining && (now - quietAt >= 0 || now - drainEnd >= 0)) {
      draining = false;
      splitter.reset();
    }
    pump(now);
  }

  /** Nanoseconds until {@link #tick} is due; a long time when nothing is awaited. */
  public long nanosToTick(long now) {
    long next = Long.MAX_VALUE;
    if (stopping != null) {
      next = Math.min(next, stopSentAt + dialect.replyNanos() - now);
    }
    if (current != null) {
      next = Math.min(next, deadline - now);
      if (settling) {
        next = Math.min(next, settleAt - now);
      }
    }
    if (draining) {
      next = Math.min(next, Math.min(quietAt, drainEnd) - now);
    }
    return Math.max(0, next);
  }

  /** True when nothing is in flight, queued or being drained. */
  public boolean idle() {
    return current == null && queue.isEmpty() && !draining && stopping == null;
  }

  /** Forgets a past of silence, for instance when the line is opened anew. */
  public void freshLine() {
    splitter.reset();
    owed = 0;
    misses = 0;
    garbage = 0;
    numbers.restart();
  }

  private void pump(long now) {
    while (current == null && !draining && stopping == null && !queue.isEmpty()) {
      Pending next = queue.pollFirst();
      // Judged again at the last moment: the line may have been disarmed while it waited.
      if (gate.judge(next.command()) instanceof CommandGate.Verdict.Pass pass) {
        if (pass.kind() == CommandKind.STOP) {
          CompletableFuture<StopOutcome> outcome = new CompletableFuture<>();
          outcome.thenAccept(o -> next.reply().complete(asReply(next, o)));
          stop(outcome, now);
          return;
        }
        begin(next, pass.text(), now);
      } else if (gate.judge(next.command()) instanceof CommandGate.Verdict.Refused refused) {
        next.reply()
            .complete(
                new Reply(next.command(), Outcome.REFUSED, List.of(), refused.reason(), 0, now));
      }
    }
  }

  private static Reply asReply(Pending stop, StopOutcome o) {
    return new Reply(
        stop.command(),
        o.confirmed() ? Outcome.ANSWERED : Outcome.TIMED_OUT,
        o.confirmed() ? List.of(o.answer()) : List.of(),
        o.confirmed() ? "" : o.advice(),
        0,
        o.nanos());
  }

  private void begin(Pending next, String text, long now) {
    if (numbers.needsReset()) {
      queue.addFirst(next);
      start(
          new Pending(dialect.lineNumberReset(), new CompletableFuture<>(), dialect.replyNanos()),
          dialect.lineNumberReset(),
          now);
    } else {
      start(next, text, now);
    }
  }

  private void start(Pending next, String text, long now) {
    current = next;
    sentText = text;
    sentAt = now;
    deadline = now + next.waitNanos();
    lines = new ArrayList<>();
    failed = false;
    echoed = false;
    resends = 0;
    settling = false;
    held = false;
    peer.send(numbers.frame(text));
  }

  private void line(ReceivedLine line) {
    long now = line.nanos();
    if (line.garbage()) {
      garbage++;
      return;
    }
    garbage = 0;
    if (stopping != null) {
      confirmStop(line);
      return;
    }
    if (Words.begins(line.text(), dialect.restart())) {
      numbers.restart();
      peer.restarted(line.text());
      if (current != null) {
        // The banner may be older than the command, which is then still answered: that one is owed.
        owed = Math.max(owed, 1);
        draining = true;
        quietAt = now + dialect.quietNanos();
        drainEnd = now + dialect.replyNanos();
      }
      settleAll(Outcome.RESTARTED, "the board restarted: " + line.text(), now);
      return;
    }
    if (current == null) {
      if (!draining && !Words.begins(line.text(), dialect.acknowledge())) {
        peer.heard(line);
      }
      return;
    }
    reply(line, now);
  }

  private void confirmStop(ReceivedLine line) {
    String text = line.text();
    boolean says =
        Words.begins(text, dialect.halted())
            || Words.begins(text, dialect.restart())
            || Words.begins(text, dialect.acknowledge());
    if (says) {
      StopOutcome outcome = new StopOutcome(true, text, line.nanos() - stopSentAt);
      CompletableFuture<StopOutcome> done = stopping;
      stopping = null;
      done.complete(outcome);
      if (Words.begins(text, dialect.restart())) {
        numbers.restart();
        peer.restarted(text);
      }
    } else {
      peer.heard(line);
    }
  }

  private void reply(ReceivedLine line, long now) {
    String text = line.text();
    if (!echoed && numbers.isEcho(text, sentText)) {
      echoed = true;
      return;
    }
    if (Words.begins(text, dialect.busy())) {
      deadline = now + dialect.replyNanos();
      return;
    }
    String wanted = Words.after(text, dialect.resend());
    if (wanted != null) {
      again(wanted, now);
      return;
    }
    String acknowledged = Words.after(text, dialect.acknowledge());
    if (acknowledged != null) {
      add(acknowledged.replaceFirst("^[:,\\s]+", ""));
      acknowledged(now);
      return;
    }
    if (Words.begins(text, dialect.failure())) {
      failed = true;
      settling = true;
      settleAt = now + dialect.quietNanos();
    }
    add(text);
    if (dialect.acknowledge().isEmpty()) {
      settling = true;
      settleAt = now + dialect.quietNanos();
    }
  }

  private void add(String text) {
    if (!text.isEmpty() && lines.size() < LONGEST_REPLY) {
      lines.add(text);
    }
  }

  private void acknowledged(long now) {
    if (owed == 0 && !held) {
      settle(failed ? Outcome.FAILED : Outcome.ANSWERED, now);
      return;
    }
    // Answers are owed for commands that timed out: of a burst, the last one is ours.
    held = true;
    heldLines = lines;
    lines = new ArrayList<>();
    owed = Math.max(0, owed - 1);
    settling = true;
    settleAt = now + dialect.quietNanos();
  }

  private void again(String wanted, long now) {
    if (++resends > RESENDS) {
      lines.add("asked " + resends + " times for the same line");
      settle(Outcome.FAILED, now);
      return;
    }
    numbers.wanted(wanted);
    deadline = now + dialect.replyNanos();
    // Some machines acknowledge after asking again, before the answer: that one is owed, not ours.
    owed = Math.max(owed, 1);
    peer.send(numbers.frameAgain(sentText));
  }

  private void settle(Outcome outcome, long now) {
    Pending done = current;
    List<String> answer = held ? heldLines : lines;
    current = null;
    settling = false;
    held = false;
    misses = 0;
    owed = 0;
    String note = outcome == Outcome.FAILED ? String.join(" / ", answer) : "";
    done.reply().complete(new Reply(done.command(), outcome, answer, note, sentAt, now));
  }

  private void timedOut(long now) {
    Pending done = current;
    current = null;
    settling = false;
    owed++;
    misses++;
    draining = true;
    quietAt = now + dialect.quietNanos();
    drainEnd = now + dialect.replyNanos();
    boolean noise = garbage > 0 || (splitter.inLine() && splitter.begun(now).garbage());
    String note =
        noise
            ? "what came back is no text; the baud rate may be wrong"
            : lines.isEmpty() ? NO_ANSWER : "the answer was cut short";
    done.reply().complete(new Reply(done.command(), Outcome.TIMED_OUT, lines, note, sentAt, now));
    if (misses >= MISSES) {
      peer.silent(misses + " commands in a row: " + note);
    }
  }

  private void settleAll(Outcome outcome, String note, long now) {
    List<Pending> all = new ArrayList<>();
    if (current != null) {
      all.add(current);
    }
    all.addAll(queue);
    boolean sent = current != null;
    current = null;
    queue.clear();
    settling = false;
    held = false;
    for (Pending p : all) {
      p.reply().complete(new Reply(p.command(), outcome, List.of(), note, sent ? sentAt : 0, now));
      sent = false;
    }
  }
}
