package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.Reply.Outcome;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.Wire;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LineSessionTest {
  @ParameterizedTest
  @EnumSource(Peer.Kind.class)
  void asksAndLogsEveryByte(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      Reply reply = session.askAndWait("M119");
      assertThat(reply.outcome()).isEqualTo(Outcome.ANSWERED);
      assertThat(reply.lines()).containsExactly("x_min = clear", "y_min = clear", "z_min = clear");
      assertThat(reply.latencyNanos()).isPositive();
      assertThat(LoggedLines.with(session.log(), "m119")).hasSize(1);
      assertThat(LoggedLines.with(session.log(), "X_MIN")).hasSize(1);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Peer.Kind.class,
      names = {"TCP", "RFC2217"})
  void comesBackAfterAHangUpAndIsDisarmed(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      session.arm();
      assertThat(session.askAndWait("G28").outcome()).isEqualTo(Outcome.ANSWERED);
      peer.hangUp();
      awaitState(session, SessionState.OPENING, SessionState.SYNCING);
      session.awaitUp(Duration.ofSeconds(60));
      assertThat(session.armed()).isFalse();
      assertThat(session.askAndWait("G28").outcome()).isEqualTo(Outcome.REFUSED);
      assertThat(session.askAndWait("M119").answered()).isTrue();
    }
  }

  private static void awaitState(LineSession session, SessionState... wanted)
      throws InterruptedException {
    long end = System.nanoTime() + 60_000_000_000L;
    while (!List.of(wanted).contains(session.state()) && System.nanoTime() < end) {
      Thread.sleep(1);
    }
    assertThat(session.state()).isIn((Object[]) wanted);
  }

  @Test
  void theSecondClientIsToldThatTheLineIsBusy() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.RFC2217, PracticeMachines.board());
        LineSession first = Sessions.up(peer.connector())) {
      assertThatThrownBy(() -> Sessions.up(peer.connector()))
          .isInstanceOf(LinkException.class)
          .hasMessageContaining("line busy");
      assertThat(first.askAndWait("M119").answered()).isTrue();
    }
  }

  @Test
  void aReleasedPortIsFreeAndTakenAgainOnDemand() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.TCP, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      session.release();
      awaitState(session, SessionState.RELEASED);
      try (LineSession other = Sessions.up(peer.connector())) {
        assertThat(other.askAndWait("M119").answered()).isTrue();
      }
      assertThat(session.askAndWait("M119").answered()).isTrue();
      assertThat(session.state()).isEqualTo(SessionState.UP);
    }
  }

  @Test
  void anIdlePortIsReleased() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.TCP, PracticeMachines.board());
        LineSession session =
            Sessions.open(
                peer.connector(),
                DialectFile.standard(),
                Sessions.quick().withIdleRelease(Duration.ofMillis(200)))) {
      session.awaitUp(Duration.ofSeconds(60));
      awaitState(session, SessionState.RELEASED);
    }
  }

  @Test
  void closingAnswersWhatWaits() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board(new Fault.Silence(0, 1e6)))) {
      LineSession session = Sessions.open(peer.connector());
      var waiting = session.ask("M119");
      session.close();
      assertThat(waiting.get(60, TimeUnit.SECONDS).outcome()).isEqualTo(Outcome.LOST);
      assertThat(session.ask("M119").get(60, TimeUnit.SECONDS).outcome()).isEqualTo(Outcome.LOST);
      assertThat(session.stop().get(60, TimeUnit.SECONDS).confirmed()).isFalse();
      assertThat(session.state()).isEqualTo(SessionState.CLOSED);
    }
  }

  @Test
  void aSilentBoardIsNamedAsSuch() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board(new Fault.Silence(0, 1e6)));
        LineSession session = Sessions.open(peer.connector())) {
      assertThatThrownBy(() -> session.awaitUp(Duration.ofMillis(600)))
          .hasMessageContaining("does not answer")
          .hasMessageContaining("115200");
    }
  }

  @Test
  void aWrongBaudRateIsSuspected() throws Exception {
    Wire wire = new Wire(250_000, false);
    wire.clientBaud(115_200);
    try (Peer peer = Peer.of(Peer.Kind.TCP, PracticeMachines.board(new Fault.Echo()), wire);
        LineSession session = Sessions.open(peer.connector())) {
      assertThatThrownBy(() -> session.awaitUp(Duration.ofMillis(900)))
          .isInstanceOf(LinkException.class);
    }
  }

  @Test
  void stopOvertakesWhatWaitsAndIsConfirmed() throws Exception {
    Dialect slow = DialectFile.with(Map.of("replySeconds", 30));
    AtomicInteger stalled = new AtomicInteger();
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session =
            Sessions.open(
                settings -> new Deaf(peer.connector().open(settings), stalled),
                slow,
                Sessions.quick())) {
      session.awaitUp(Duration.ofSeconds(60));
      stalled.set(1);
      var first = session.ask("M119");
      var second = session.ask("M105");
      StopOutcome stop = session.stop().get(60, TimeUnit.SECONDS);
      assertThat(stop.confirmed()).isTrue();
      assertThat(stop.answer()).startsWith("halted");
      assertThat(first.get(60, TimeUnit.SECONDS).outcome()).isEqualTo(Outcome.STOPPED);
      assertThat(second.get(60, TimeUnit.SECONDS).outcome()).isEqualTo(Outcome.STOPPED);
    }
  }

  /** Swallows the next commands, the stop excepted. */
  private record Deaf(Transport line, AtomicInteger commands) implements Transport {
    @Override
    public String name() {
      return line.name();
    }

    @Override
    public int read(byte[] into, Duration wait) throws LinkException {
      return line.read(into, wait);
    }

    @Override
    public void write(byte[] bytes) throws LinkException {
      if (bytes[0] == '\n' || commands.getAndDecrement() <= 0) {
        line.write(bytes);
      }
    }

    @Override
    public void close() {
      line.close();
    }
  }

  @Test
  void aBoardThatRestartsWhilePolledGoesOnAndDisarms() throws Exception {
    BlockingQueue<String> banners = new LinkedBlockingQueue<>();
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board(new Fault.Restarts(0.3)));
        LineSession session = Sessions.up(peer.connector());
        AutoCloseable listening =
            session.subscribe(
                new SessionListener() {
                  @Override
                  public void restarted(String banner) {
                    banners.add(banner);
                  }
                })) {
      assertThat(listening).isNotNull();
      session.arm();
      int answered = 0;
      long end = System.nanoTime() + 60_000_000_000L;
      while ((banners.size() < 2 || answered <= 10) && System.nanoTime() < end) {
        Reply reply = session.askAndWait("M119");
        assertThat(reply.outcome()).isIn(Outcome.ANSWERED, Outcome.RESTARTED);
        answered += reply.answered() ? 1 : 0;
        Thread.sleep(5);
      }
      assertThat(banners).hasSizeGreaterThanOrEqualTo(2).first().asString().startsWith("boot");
      assertThat(answered).isGreaterThan(10);
      assertThat(session.armed()).isFalse();
    }
  }

  /** Talks without end and swallows a write until it is closed, as a dead driver does. */
  private static final class Stuck implements Transport {
    private final Transport line;
    private final java.util.concurrent.CountDownLatch closed =
        new java.util.concurrent.CountDownLatch(1);
    private final AtomicInteger stuck;

    Stuck(Transport line, AtomicInteger stuck) {
      this.line = line;
      this.stuck = stuck;
    }

    @Override
    public String name() {
      return line.name();
    }

    @Override
    public int read(byte[] into, Duration wait) throws LinkException {
      if (closed.getCount() == 0) {
        throw LinkException.closed(name());
      }
      int n = line.read(into, Duration.ofMillis(5));
      if (n == 0 && stuck.get() > 0) {
        into[0] = '\n';
        return 1;
      }
      return n;
    }

    @Override
    public void write(byte[] bytes) throws LinkException {
      if (stuck.get() > 0) {
        try {
          closed.await();
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
        }
        throw LinkException.lost(name());
      }
      line.write(bytes);
    }

    @Override
    public void close() {
      stuck.set(0);
      closed.countDown();
      line.close();
    }
  }

  @Test
  void aWriteThatNeverEndsIsCutOffAndTheLineComesBack() throws Exception {
    AtomicInteger stuck = new AtomicInteger();
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session =
            Sessions.up(settings -> new Stuck(peer.connector().open(settings), stuck))) {
      stuck.set(1);
      assertThat(session.ask("M119").get(60, TimeUnit.SECONDS).outcome())
          .isIn(Outcome.LOST, Outcome.TIMED_OUT);
      // The question may be given up before the line is: then the next one is lost with the line.
      boolean answered = false;
      for (int i = 0; i < 20 && !answered; i++) {
        session.awaitUp(Duration.ofSeconds(30));
        answered = session.askAndWait("M119").answered();
      }
      assertThat(answered).isTrue();
    }
  }

  @Test
  void whatIsAskedWhileAReplyIsToldGoesOutBehindIt() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.RFC2217, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      var second = session.ask("M119").thenCompose(first -> session.ask("M105"));
      assertThat(second.get(60, TimeUnit.SECONDS).lines().toString()).contains("hotend");
    }
  }
}
