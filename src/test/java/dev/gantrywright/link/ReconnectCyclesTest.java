package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticePty;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.link.pty.Pty;
import dev.gantrywright.link.serial.SerialTransport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Unplugs and replugs a serial port under an open session. {@code -Dlink.cycles=500} is the full
 * count; the ordinary run does fewer.
 */
class ReconnectCyclesTest {
  private static final int CYCLES = Integer.getInteger("link.cycles", 40);

  @TempDir Path folder;

  @BeforeEach
  void ptys() {
    Tool.needThat(Pty.available(), "pseudo-terminals");
  }

  @Test
  void reconnectsEachTimeAndLeavesNothingOpen() throws Exception {
    PracticeBoard board = PracticeMachines.board();
    Path port = folder.resolve("port");
    PracticePty pty = plug(board, port);
    int threads = 0;
    long files = 0;
    try (LineSession session =
        Sessions.up(settings -> SerialTransport.open(port.toString(), settings))) {
      for (int i = 0; i < CYCLES; i++) {
        assertThat(session.askAndWait("M119").answered()).as("cycle %d", i).isTrue();
        pty.close();
        awaitDown(session);
        pty = plug(board, port);
        session.awaitUp(Duration.ofSeconds(60));
        if (i == 4) {
          // The first rounds load classes and libraries.
          threads = Thread.activeCount();
          files = openFiles();
        }
      }
      assertThat(session.askAndWait("M119").answered()).isTrue();
      awaitAsFewAs(threads, files);
    } finally {
      pty.close();
    }
  }

  /** What was opened for the last round may take a moment to end. */
  private static void awaitAsFewAs(int threads, long files)
      throws InterruptedException, IOException {
    long end = System.nanoTime() + 60_000_000_000L;
    while ((Thread.activeCount() > threads + 1 || openFiles() > files + 2)
        && System.nanoTime() < end) {
      Thread.sleep(10);
    }
    assertThat(Thread.activeCount()).isLessThanOrEqualTo(threads + 1);
    assertThat(openFiles()).isLessThanOrEqualTo(files + 2);
  }

  private static void awaitDown(LineSession session) throws InterruptedException {
    long end = System.nanoTime() + 60_000_000_000L;
    while (session.state() == SessionState.UP && System.nanoTime() < end) {
      Thread.sleep(1);
    }
    assertThat(session.state()).isNotEqualTo(SessionState.UP);
  }

  private PracticePty plug(PracticeBoard board, Path port) throws IOException {
    PracticePty pty = PracticePty.open(board, Wire.ideal(), System::nanoTime, Thread::new);
    Path fresh = folder.resolve("fresh");
    Files.createSymbolicLink(fresh, Path.of(pty.path()));
    Files.move(fresh, port, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    return pty;
  }

  private static long openFiles() throws IOException {
    Path open = Path.of("/proc/self/fd");
    if (!Files.isDirectory(open)) {
      return 0;
    }
    try (Stream<Path> files = Files.list(open)) {
      return files.count();
    }
  }
}
