package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.DialectFile;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.Peer;
import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.SessionTiming;
import dev.gantrywright.link.Sessions;
import dev.gantrywright.link.Transport;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.prove.Sample.Validity;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class WatchTest {
  private static final List<String> ENDS = List.of("xMin", "yMin", "zMin");

  /** Counts questions under way: each must be answered before the next one is sent. */
  private static final class Counting implements Transport {
    private final Transport line;
    private final AtomicInteger underWay;
    private final AtomicInteger most;

    Counting(Transport line, AtomicInteger underWay, AtomicInteger most) {
      this.line = line;
      this.underWay = underWay;
      this.most = most;
    }

    @Override
    public String name() {
      return line.name();
    }

    @Override
    public int read(byte[] into, Duration wait) throws dev.gantrywright.link.LinkException {
      int n = line.read(into, wait);
      String text = new String(into, 0, n, StandardCharsets.US_ASCII);
      if (text.contains("done")) {
        underWay.decrementAndGet();
      }
      return n;
    }

    @Override
    public void write(byte[] bytes) throws dev.gantrywright.link.LinkException {
      most.accumulateAndGet(underWay.incrementAndGet(), Math::max);
      line.write(bytes);
    }

    @Override
    public void close() {
      line.close();
    }
  }

  @Test
  void atFullRateOneQuestionIsUnderWay() throws Exception {
    AtomicInteger underWay = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    CopyOnWriteArrayList<Sample> samples = new CopyOnWriteArrayList<>();
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session =
            Sessions.up(s -> new Counting(peer.connector().open(s), underWay, most));
        Watch watch = Watch.start(session, ENDS, 0, samples::add, System::nanoTime, Thread::new)) {
      assertThat(watch).isNotNull();
      await(() -> samples.size() >= 200);
    }
    assertThat(most.get()).isEqualTo(1);
    assertThat(samples).allMatch(s -> s.validity() == Validity.VALID && s.states().size() == 3);
    for (int i = 1; i < samples.size(); i++) {
      assertThat(samples.get(i).nanos()).isGreaterThanOrEqualTo(samples.get(i - 1).nanos());
    }
  }

  @Test
  void aSilentBoardIsStaleAndAskedLessOften() throws Exception {
    CopyOnWriteArrayList<Sample> samples = new CopyOnWriteArrayList<>();
    PracticeBoard board = PracticeMachines.board();
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, board);
        LineSession session =
            Sessions.open(peer.connector(), DialectFile.standard(), Sessions.quick());
        Watch watch = Watch.start(session, ENDS, 50, samples::add, System::nanoTime, Thread::new)) {
      assertThat(watch).isNotNull();
      await(() -> samples.stream().anyMatch(s -> s.validity() == Validity.VALID));
      board.faults(List.of(new Fault.Silence(0, 1e6)));
      await(() -> samples.stream().anyMatch(s -> s.validity() == Validity.STALE));
    }
    Sample stale =
        samples.stream().filter(s -> s.validity() == Validity.STALE).findFirst().orElseThrow();
    // The last known states stand, marked as old.
    assertThat(stale.states()).containsOnlyKeys(ENDS);
  }

  @Test
  void aLostLineIsDisconnectedAndComesBack() throws Exception {
    CopyOnWriteArrayList<Sample> samples = new CopyOnWriteArrayList<>();
    SessionTiming slow =
        new SessionTiming(
            Duration.ofMillis(300),
            Duration.ofSeconds(1),
            Duration.ofSeconds(5),
            Duration.ofMillis(200),
            Duration.ZERO,
            Duration.ofSeconds(3));
    try (Peer peer = Peer.of(Peer.Kind.TCP, PracticeMachines.board());
        LineSession session = Sessions.open(peer.connector(), DialectFile.standard(), slow);
        Watch watch =
            Watch.start(session, ENDS, 100, samples::add, System::nanoTime, Thread::new)) {
      assertThat(watch).isNotNull();
      await(() -> samples.size() >= 5);
      peer.hangUp();
      await(() -> samples.stream().anyMatch(s -> s.validity() == Validity.DISCONNECTED));
      int before = samples.size();
      await(
          () ->
              samples.size() > before
                  && samples.get(samples.size() - 1).validity() == Validity.VALID);
    }
  }

  @Test
  void closingEndsItAtOnce() throws Exception {
    AtomicInteger samples = new AtomicInteger();
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      Watch watch =
          Watch.start(
              session, ENDS, 0, s -> samples.incrementAndGet(), System::nanoTime, Thread::new);
      await(() -> samples.get() > 10);
      watch.close();
      int after = samples.get();
      Thread.sleep(50);
      assertThat(samples.get()).isEqualTo(after);
    }
  }

  private interface Condition {
    boolean met();
  }

  private static void await(Condition condition) throws InterruptedException {
    long end = System.nanoTime() + 60_000_000_000L;
    while (!condition.met() && System.nanoTime() < end) {
      Thread.sleep(2);
    }
    assertThat(condition.met()).isTrue();
  }
}
