package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.LogEntry.Direction;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
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

  private static void save(ByteLog log, Path target) throws IOException {
    try (Writer out = Files.newBufferedWriter(target)) {
      SavedLog.write(log, out, share -> {}, () -> false);
    }
  }

  @Test
  void savesEveryByteWithItsTime() throws IOException {
    Path saved = folder.resolve("saved.txt");
    try (ByteLog log = ByteLog.in(folder, 1 << 16, 1_000_000_000L)) {
      sent(log, "M119\n", 1_500_000_000L);
      received(log, "x_min\t= \u0001\u00ff\\\r\n", 2_000_250_000L);
      save(log, saved);
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
      assertThat(LoggedLines.with(log, "TOUCHED"))
          .containsExactly("     0.000000 < x_min = touched");
      assertThat(LoggedLines.with(log, "nothing like it")).isEmpty();
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
      assertThat(LoggedLines.with(log, "line 3")).hasSize(111);
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
      assertThat(LoggedLines.with(log, "m119")).hasSize(1);
      assertThat(log.trouble()).isEmpty();
    }
  }

  @Test
  void linesThatReadsHaveCutAreSavedWholeAndNoByteIsLost() throws IOException {
    try (ByteLog log = ByteLog.in(folder, 1 << 16, 0)) {
      received(log, "x_min: cl", 0);
      sent(log, "M1", 1_000_000);
      received(log, "ear\r\n\r\nbegun", 2_000_000);
      sent(log, "19\n", 3_000_000);
      StringWriter out = new StringWriter();
      SavedLog.write(log, out, share -> {}, () -> false);
      assertThat(out.toString().lines())
          .containsExactly(
              "     0.002000 < x_min: clear\\r\\n",
              "     0.002000 < \\r\\n",
              "     0.003000 > M119\\n",
              "     0.003000 < begun");
    }
  }

  @Test
  void savingStopsWhenAsked() throws IOException {
    try (ByteLog log = ByteLog.in(folder, 1 << 16, 0)) {
      received(log, "line\n", 0);
      assertThatThrownBy(() -> SavedLog.write(log, new StringWriter(), share -> {}, () -> true))
          .isInstanceOf(CancellationException.class);
    }
  }

  @Test
  void aFileThatIsFullIsToldAndTheNewestStaysToBeRead() throws IOException {
    try (ByteLog log = ByteLog.in(folder, 10_000, 2_000, 0)) {
      for (int i = 0; i < 5_000; i++) {
        received(log, "line " + i + "\n", i);
      }
      assertThat(log.trouble()).hasValueSatisfying(words -> assertThat(words).contains("full"));
      assertThat(LoggedLines.with(log, "line 3")).isNotEmpty();
      assertThat(LoggedLines.with(log, "line 4999")).hasSize(1);
      assertThat(LoggedLines.with(log, "line 2500")).isEmpty();
      StringWriter out = new StringWriter();
      SavedLog.write(log, out, share -> {}, () -> false);
      List<String> rows = out.toString().lines().toList();
      long gap = rows.stream().filter(row -> row.contains("reads were not kept")).count();
      assertThat(gap).isEqualTo(1);
      String told = rows.stream().filter(row -> row.startsWith("(")).findFirst().orElseThrow();
      int missing = Integer.parseInt(told.replaceAll("\\D+", ""));
      assertThat(rows).hasSize(5_000 - missing + 1);
    }
  }

  @Test
  void aReadLargerThanTheFilesBufferComesBackWhole() throws IOException {
    String large = "z".repeat(200_000);
    try (ByteLog log = ByteLog.in(folder, 1_000, 0)) {
      received(log, "before\n", 1);
      received(log, large, 2);
      received(log, "after\n", 3);
      List<Integer> sizes = new ArrayList<>();
      LogReading reading = log.reading();
      while (reading.more(entry -> sizes.add(entry.bytes().length))) {
        // The next stretch.
      }
      assertThat(sizes).containsExactly(7, 200_000, 6);
    }
  }

  @Test
  void whatIsReadWhileItGrowsIsReadOnceAndInOrder() throws IOException {
    try (ByteLog log = ByteLog.in(folder, 500, 0)) {
      List<String> read = new ArrayList<>();
      LogReading reading = log.reading();
      for (int i = 0; i < 3_000; i++) {
        received(log, "n" + i, i);
        if (i % 97 == 0) {
          reading.more(entry -> read.add(new String(entry.bytes(), StandardCharsets.US_ASCII)));
        }
      }
      while (reading.more(
          entry -> read.add(new String(entry.bytes(), StandardCharsets.US_ASCII)))) {
        // The next stretch.
      }
      assertThat(read).hasSize(3_000);
      for (int i = 0; i < read.size(); i++) {
        assertThat(read.get(i)).isEqualTo("n" + i);
      }
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
