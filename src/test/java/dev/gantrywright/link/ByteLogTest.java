package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.LogEntry.Direction;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ByteLogTest {
  @TempDir Path folder;

  private static void sent(ByteLog log, String text, long nanos) {
    byte[] b = text.getBytes(StandardCharsets.ISO_8859_1);
    log.record(Direction.SENT, b, b.length, nanos);
  }

  private static void received(ByteLog log, String text, long nanos) {
    byte[] b = text.getBytes(StandardCharsets.ISO_8859_1);
    log.record(Direction.RECEIVED, b, b.length, nanos);
  }

  @Test
  void savesEveryByteWithItsTime() throws IOException {
    Path saved = folder.resolve("saved.txt");
    try (ByteLog log = ByteLog.in(folder, 1 << 16, 1_000_000_000L)) {
      sent(log, "M119\n", 1_500_000_000L);
      received(log, "x_min\t= \u0001\u00ff\\\r\n", 2_000_250_000L);
      log.save(saved);
    }
    assertThat(Files.readAllLines(saved))
        .containsExactly(
            "     0.500000 > M119\\n", "     1.000250 < x_min\\t= \\x01\\xFF\\\\\\r\\n");
  }

  @Test
  void findsLinesThatReadsHaveCut() throws IOException {
    try (ByteLog log = ByteLog.in(folder, 1 << 16, 0)) {
      received(log, "x_min = tou", 10);
      sent(log, "M105\n", 15);
      received(log, "ched\nother\n", 20);
      assertThat(log.search("TOUCHED", 5))
          .singleElement()
          .satisfies(
              e -> {
                assertThat(e.direction()).isEqualTo(Direction.RECEIVED);
                assertThat(new String(e.bytes(), StandardCharsets.UTF_8))
                    .isEqualTo("x_min = touched");
                assertThat(e.nanos()).isEqualTo(20);
              });
      assertThat(log.search("nothing like it", 5)).isEmpty();
    }
  }

  @Test
  void theRingKeepsTheNewestAndTheFileAll() throws IOException {
    try (ByteLog log = ByteLog.in(folder, 2_000, 0)) {
      for (int i = 0; i < 1_000; i++) {
        received(log, "line " + i + "\n", i);
      }
      List<LogEntry> newest = log.newest();
      assertThat(newest).hasSizeBetween(20, 50);
      assertThat(newest.get(newest.size() - 1).text()).contains("line 999");
      assertThat(log.search("line 3", 1_000)).hasSize(111);
      assertThat(log.entries()).isEqualTo(1_000);
    }
  }

  @Test
  void theFileGoesWithTheLog() throws IOException {
    ByteLog log = ByteLog.in(folder, 1_000, 0);
    sent(log, "x", 0);
    log.close();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void inMemoryItSearchesTheRing() throws IOException {
    try (ByteLog log = ByteLog.inMemory(1_000, 0)) {
      sent(log, "M119\n", 5);
      assertThat(log.search("m119", 5)).hasSize(1);
      assertThat(log.trouble()).isEmpty();
    }
  }

  /** A million lines stay within 64 MB of heap; the measured growth is far below. */
  @Test
  void aMillionLinesAreCheapInMemory() throws IOException {
    byte[] line =
        "x_min = clear y_min = clear z_min = touched\r\n".getBytes(StandardCharsets.US_ASCII);
    try (ByteLog log = ByteLog.in(folder, 4 << 20, 0)) {
      long before = usedHeap();
      for (int i = 0; i < 1_000_000; i++) {
        log.record(Direction.RECEIVED, line, line.length, i);
      }
      long grown = usedHeap() - before;
      assertThat(log.entries()).isEqualTo(1_000_000);
      assertThat(grown).isLessThan(64L << 20);
      System.out.printf("a million lines logged: heap grew by %.1f MB%n", grown / 1e6);
    }
  }

  private static long usedHeap() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
