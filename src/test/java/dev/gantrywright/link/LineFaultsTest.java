package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.Reply.Outcome;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Faults of a line under a whole session: what the protocol alone cannot show. */
class LineFaultsTest {
  /** A line that answers questions, and floods or spoils what it carries when told to. */
  private static final class Spoiled implements Transport {
    private final Transport line;
    private final UnaryOperator<byte[]> spoil;
    private final boolean flood;
    private final AtomicLong carried = new AtomicLong();
    private volatile boolean closed;

    Spoiled(Transport line, UnaryOperator<byte[]> spoil, boolean flood) {
      this.line = line;
      this.spoil = spoil;
      this.flood = flood;
    }

    @Override
    public String name() {
      return "spoiled";
    }

    @Override
    public int read(byte[] into, Duration wait) throws LinkException {
      if (closed) {
        throw LinkException.closed(name());
      }
      int n = line.read(into, flood ? Duration.ZERO : wait);
      if (n == 0 && flood) {
        Arrays.fill(into, (byte) 'U');
        carried.addAndGet(into.length);
        return into.length;
      }
      byte[] out = spoil.apply(Arrays.copyOf(into, n));
      System.arraycopy(out, 0, into, 0, out.length);
      return out.length;
    }

    @Override
    public void write(byte[] bytes) throws LinkException {
      line.write(bytes);
    }

    @Override
    public void close() {
      closed = true;
      line.close();
    }
  }

  @Test
  void aFloodWithoutEndNeitherFillsTheMemoryNorStopsTheStop() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board())) {
      Spoiled[] line = new Spoiled[1];
      try (LineSession session =
          Sessions.open(
              s -> line[0] = new Spoiled(peer.connector().open(s), b -> b, true),
              DialectFile.standard(),
              Sessions.quick())) {
        long end = System.nanoTime() + 60_000_000_000L;
        while (line[0].carried.get() < 64L << 20 && System.nanoTime() < end) {
          Thread.sleep(5);
        }
        assertThat(line[0].carried.get()).isGreaterThan(8L << 20);
        assertThat(session.log().newest().stream().mapToLong(e -> e.bytes().length).sum())
            .isLessThan(1 << 17);
        StopOutcome stop = session.stop().get(60, TimeUnit.SECONDS);
        assertThat(stop.nanos()).isLessThan(60_000_000_000L);
      }
    }
  }

  @Test
  void oneFlippedBitInTenReadsLeavesTheSessionUsable() throws Exception {
    AtomicLong reads = new AtomicLong();
    UnaryOperator<byte[]> flip =
        b -> {
          if (b.length > 0 && reads.incrementAndGet() % 10 == 0) {
            b[b.length / 2] ^= 0x10;
          }
          return b;
        };
    Dialect hasty = DialectFile.with(java.util.Map.of("replySeconds", 0.2, "quietSeconds", 0.02));
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session =
            Sessions.open(
                s -> new Spoiled(peer.connector().open(s), flip, false), hasty, Sessions.quick())) {
      session.awaitUp(Duration.ofSeconds(60));
      int answered = 0;
      // A slow computer gives more of them up; what counts is that it goes on.
      for (int i = 0; i < 1_000 && answered < 40; i++) {
        Outcome outcome = session.askAndWait("M119").outcome();
        assertThat(outcome).isIn(Outcome.ANSWERED, Outcome.TIMED_OUT, Outcome.LOST, Outcome.FAILED);
        answered += outcome == Outcome.ANSWERED ? 1 : 0;
      }
      assertThat(answered).isEqualTo(40);
      assertThat(reads.get()).as("every tenth read was spoiled").isGreaterThan(10);
    }
  }

  @Test
  void aReplyCutByTheUnpluggedCableIsLostAndTheNextOneWorks() throws Exception {
    Dialect dialect = Sessions.patient();
    try (Peer peer = Peer.of(Peer.Kind.TCP, PracticeMachines.board());
        LineSession session = Sessions.open(peer.connector(), dialect, Sessions.quick())) {
      session.awaitUp(Duration.ofSeconds(60));
      var waiting = session.ask("M503");
      peer.hangUp();
      assertThat(waiting.get(60, TimeUnit.SECONDS).outcome()).isIn(Outcome.LOST, Outcome.ANSWERED);
      long end = System.nanoTime() + 60_000_000_000L;
      Outcome outcome = Outcome.LOST;
      while (outcome != Outcome.ANSWERED && System.nanoTime() < end) {
        outcome = session.askAndWait("M119").outcome();
        Thread.sleep(5);
      }
      assertThat(outcome).isEqualTo(Outcome.ANSWERED);
      assertThat(LoggedLines.with(session.log(), "x_min")).isNotEmpty();
    }
  }

  @Test
  void bytesOfTheLogAreThoseOfTheLine() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      session.askAndWait("M105");
      String sent =
          session.log().newest().stream()
              .filter(e -> e.direction() == LogEntry.Direction.SENT)
              .map(e -> new String(e.bytes(), StandardCharsets.US_ASCII))
              .reduce("", String::concat);
      assertThat(sent).isEqualTo("M115\nM105\n");
    }
  }
}
