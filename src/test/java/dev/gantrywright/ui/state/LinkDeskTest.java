package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.prove.Check;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Against the real practice board: this test's thread stands for the view's. */
class LinkDeskTest {
  private final ExecutorService background = Executors.newCachedThreadPool();
  private final LinkedBlockingQueue<Runnable> view = new LinkedBlockingQueue<>();
  private final LinkDesk desk = new LinkDesk(background, view::add);
  private PrinterProfile heron;

  @BeforeEach
  void open() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
  }

  @AfterEach
  void close() {
    desk.close();
    background.shutdown();
  }

  private void until(BooleanSupplier reached) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(120);
    while (!reached.getAsBoolean()) {
      Runnable next = view.poll(100, TimeUnit.MILLISECONDS);
      if (next != null) {
        next.run();
      }
      assertThat(System.nanoTime()).as("reached in time").isLessThan(end);
    }
  }

  private void connect() throws InterruptedException {
    desk.connect(heron, new PortAddress.Practice(""), 50);
    assertThat(desk.status().get().kind()).isEqualTo(LinkStatus.Kind.CONNECTING);
    until(() -> desk.live().get().fresh());
  }

  @Test
  void watchesThePracticeBoard() throws Exception {
    connect();
    assertThat(desk.status().get().kind()).isEqualTo(LinkStatus.Kind.UP);
    assertThat(desk.live().get().of("xMin")).isEqualTo(ContactState.OPEN);
    assertThat(desk.live().get().of("zMin"))
        .as("the wrong polarity shows at rest")
        .isEqualTo(ContactState.TRIGGERED);
    assertThat(desk.live().get().of("xMax")).isEqualTo(ContactState.UNKNOWN);
    assertThat(desk.trace().ends()).containsExactly("xMin", "yMin", "zMin");
  }

  @Test
  void theHandCanTouchAnEndstop() throws Exception {
    connect();
    desk.touch("xMin", true);
    until(() -> desk.live().get().of("xMin") == ContactState.TRIGGERED);
    assertThat(desk.touched().get()).containsExactly("xMin");
    desk.touch("xMin", false);
    until(() -> desk.live().get().of("xMin") == ContactState.OPEN);
  }

  @Test
  void proofFindsTheEndstopThatDisagrees() throws Exception {
    connect();
    desk.prove(heron);
    until(() -> desk.proof().get().isPresent());
    assertThat(desk.proof().get().orElseThrow().checks())
        .filteredOn(check -> check.verdict() == Check.Verdict.FAIL)
        .extracting(Check::path)
        .containsExactly("endstops.zMin.inverted");
  }

  @Test
  void stopIsConfirmed() throws Exception {
    connect();
    desk.stop();
    until(() -> desk.said().get().startsWith("The machine confirmed"));
  }

  @Test
  void movingIsRefusedUntilArmed() throws Exception {
    connect();
    desk.ask("G28");
    until(() -> desk.said().get().startsWith("G28: "));
    assertThat(desk.said().get()).contains("arm");
    desk.arm(true);
    assertThat(desk.armed().get()).isTrue();
    desk.disconnect();
    assertThat(desk.armed().get()).isFalse();
  }

  @Test
  void aLineThatIsTriedAgainShowsNoContactAsKnown() throws Exception {
    try (ServerSocket board = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      desk.connect(heron, PortAddress.parse("tcp://127.0.0.1:" + board.getLocalPort()), 20);
      try (Socket line = board.accept()) {
        Thread machine = new Thread(() -> answer(line), "machine");
        machine.setDaemon(true);
        machine.start();
        until(() -> desk.seen().get("zMin") == ContactState.TRIGGERED);
        assertThat(Expectation.disagreeing(heron, desk)).contains("zMin");
      }
      until(() -> desk.status().get().kind() != LinkStatus.Kind.UP);
      assertThat(desk.status().get().held()).isTrue();
      assertThat(desk.seen()).isNotEmpty();
      assertThat(desk.seen().values()).containsOnly(ContactState.UNKNOWN);
      assertThat(Expectation.disagreeing(heron, desk)).isEmpty();
    }
  }

  /** A machine whose z min is triggered, whatever it is asked. */
  private static void answer(Socket line) {
    try (BufferedReader asked =
        new BufferedReader(
            new InputStreamReader(line.getInputStream(), StandardCharsets.US_ASCII))) {
      while (asked.readLine() != null) {
        line.getOutputStream()
            .write(
                "x_min: open\ny_min: open\nz_min: TRIGGERED\nok\n"
                    .getBytes(StandardCharsets.US_ASCII));
      }
    } catch (IOException gone) {
      return;
    }
  }

  @Test
  void aLineThatOpensWhileTheWindowClosesIsClosedAgain() throws Exception {
    LinkedBlockingQueue<Runnable> opening = new LinkedBlockingQueue<>();
    AtomicBoolean closed = new AtomicBoolean();
    LinkDesk late =
        new LinkDesk(
            task -> {
              if (closed.get()) {
                throw new RejectedExecutionException("the window is closed");
              }
              opening.add(task);
            },
            Runnable::run);
    try (ServerSocket board = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      late.connect(heron, PortAddress.parse("tcp://127.0.0.1:" + board.getLocalPort()), 20);
      late.close();
      closed.set(true);
      opening.take().run();
      try (Socket line = board.accept()) {
        line.setSoTimeout((int) TimeUnit.SECONDS.toMillis(60));
        assertThat(ended(line)).as("the line is given up").isTrue();
      }
    }
    assertThat(late.status().get()).isEqualTo(LinkStatus.none());
  }

  private static boolean ended(Socket line) throws IOException {
    try {
      while (line.getInputStream().read() >= 0) {
        // What was said before it was given up.
      }
    } catch (SocketTimeoutException open) {
      return false;
    } catch (IOException reset) {
      return true;
    }
    return true;
  }

  @Test
  void aPortThatIsNotThereIsOneClearLine() throws Exception {
    desk.connect(heron, PortAddress.parse("tcp://127.0.0.1:1"), 20);
    until(() -> desk.status().get().kind() == LinkStatus.Kind.LOST);
    assertThat(desk.status().get().words()).contains("127.0.0.1").doesNotContain("\n");
  }

  @Test
  void disconnectingForgetsWhatWasSeen() throws Exception {
    connect();
    desk.disconnect();
    assertThat(desk.status().get()).isEqualTo(LinkStatus.none());
    assertThat(desk.live().get().states()).isEmpty();
  }

  @Test
  void theLogOutlivesItsLineUntilTheNextIsOpen() throws Exception {
    connect();
    until(() -> desk.logged() > 0);
    ByteLog log = desk.log().orElseThrow();
    desk.disconnect();
    assertThat(desk.log()).containsSame(log);
    assertThat(desk.logged()).isPositive();
    connect();
    assertThat(desk.log().orElseThrow()).isNotSameAs(log);
    until(() -> closed(log));
  }

  /** A closed log can still show what is in memory, and no longer reads its file. */
  private static boolean closed(ByteLog log) {
    try {
      return !log.reading().more(entry -> {});
    } catch (IOException e) {
      return true;
    }
  }
}
