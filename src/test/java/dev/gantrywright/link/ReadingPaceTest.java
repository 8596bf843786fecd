package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.remote.TcpTransport;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line that always has more is read at a pace; all of it is read. */
class ReadingPaceTest {
  private static final int READ = 4096;

  private long now = Long.MAX_VALUE - 1_000_000; // the clock may run over
  private final List<Long> pauses = new ArrayList<>();
  private final ReadingPace pace =
      new ReadingPace(
          () -> now,
          nanos -> {
            pauses.add(nanos);
            now += nanos;
          });

  private void take(long nanos, int bytes) {
    pace.takes();
    now += nanos;
    pace.took(bytes);
  }

  @Test
  void aFloodIsReadAtThePaceAndNoSlower() {
    long begun = now;
    int reads = 10_000;
    for (int i = 0; i < reads; i++) {
      take(20_000, READ);
    }
    double seconds = (now - begun) / 1e9;
    double most = ReadingPace.BYTES * 1e9 / ReadingPace.NANOS;
    assertThat(reads * (double) READ / seconds).isBetween(most * 0.97, most);
    assertThat(pauses).allSatisfy(pause -> assertThat(pause).isBetween(1L, ReadingPace.NANOS));
  }

  /** As while the program is new, or another takes the core. */
  @Test
  void whoIsSlowWorksHalfOfTheTimeAtMost() {
    for (long each : new long[] {100_000, 700_000, 3_000_000}) {
      pauses.clear();
      long begun = now;
      int reads = 1_000;
      for (int i = 0; i < reads; i++) {
        take(each, READ / 8);
      }
      assertThat(reads * (double) each / (now - begun))
          .as("reads of %d ns", each)
          .isBetween(0.4, 0.55);
    }
  }

  @Test
  void noRestIsLong() {
    take(500_000_000, READ);
    assertThat(pauses).containsExactly(ReadingPace.LONGEST_REST_NANOS);
  }

  @Test
  void whatFullSpeedUsbCarriesIsNeverHeldUp() {
    for (int i = 0; i < 10_000; i++) {
      now += 900_000;
      take(100_000, 19 * 64);
    }
    assertThat(pauses).isEmpty();
  }

  @Test
  void aQuietLineIsNot() {
    for (int i = 0; i < 100; i++) {
      now += 100_000_000;
      take(100_000, 60);
    }
    assertThat(pauses).isEmpty();
  }

  @Test
  void everyLineOfAFloodIsTaken(@TempDir Path folder) throws Exception {
    int lines = 60_000;
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        ByteLog log = ByteLog.in(folder, 1 << 16, System.nanoTime())) {
      CompletableFuture<Void> said = CompletableFuture.runAsync(() -> say(server, lines));
      try (LineSession session = open(server.getLocalPort(), log)) {
        said.get(120, TimeUnit.SECONDS);
        assertThat(LoggedLines.with(session.log(), "feather of the left wing")).hasSize(lines);
      }
    }
  }

  private static LineSession open(int port, ByteLog log) throws LinkException {
    return LineSession.open(
        new LineSession.Parts(
            "flood",
            settings -> TcpTransport.open("127.0.0.1", port, Duration.ofSeconds(60)),
            SerialSettings.at(115_200),
            Sessions.patient(),
            CommandTable.standard(),
            Sessions.quick(),
            log,
            System::nanoTime,
            Thread::new));
  }

  /** Says the lines, then waits until the other side has read to the end and hangs up. */
  private static void say(ServerSocket server, int lines) {
    byte[] line = "echo: feather of the left wing\n".getBytes(StandardCharsets.US_ASCII);
    try (Socket board = server.accept()) {
      OutputStream out = board.getOutputStream();
      for (int i = 0; i < lines; i++) {
        out.write(line);
      }
      board.shutdownOutput();
      while (board.getInputStream().read() >= 0) {
        continue;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
