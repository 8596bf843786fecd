package dev.gantrywright.ui.state;

import static dev.gantrywright.link.LogEntry.Direction.RECEIVED;
import static dev.gantrywright.link.LogEntry.Direction.SENT;
import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.LogEntry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogFollowerTest {
  @TempDir Path folder;
  private ByteLog log;

  @BeforeEach
  void begin() throws IOException {
    // So small a ring that nearly everything is in the file alone.
    log = ByteLog.in(folder, 2_000, 0);
  }

  @AfterEach
  void end() throws IOException {
    log.close();
  }

  private void add(LogEntry.Direction way, double seconds, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    log.record(way, bytes, bytes.length, (long) (seconds * 1e9));
  }

  private List<String> rows(String words, int most) {
    return new LogFollower(log, words, most).look().rows();
  }

  @Test
  void aReadOfManyLinesIsManyRowsAndALineOfTwoReadsIsOne() {
    add(RECEIVED, 1, "one\ntwo\nth");
    add(SENT, 1.5, "M119\n");
    add(RECEIVED, 2, "ree\n");
    assertThat(rows("", 10))
        .containsExactly(
            "     1.000000 < one",
            "     1.000000 < two",
            "     1.500000 > M119",
            "     2.000000 < three");
  }

  @Test
  void theNewestLinesStayAndTheOneThatHasBegunIsShown() {
    for (int i = 0; i < 500; i++) {
      add(RECEIVED, i, "a" + i + "\nb" + i + "\n");
    }
    add(RECEIVED, 500, "begun");
    assertThat(rows("", 3))
        .containsExactly("   499.000000 < a499", "   499.000000 < b499", "   500.000000 < begun");
  }

  @Test
  void aSearchLooksThroughWhatIsNoLongerInMemoryInAnyCase() {
    add(RECEIVED, 0, "Endstop X\nnothing\n");
    for (int i = 0; i < 5_000; i++) {
      add(RECEIVED, i, "other\n");
    }
    LogFollower follower = new LogFollower(log, " endSTOP ", 2);
    LogFollower.Look look = follower.look();
    while (look.more()) {
      look = follower.look();
    }
    assertThat(look.rows()).containsExactly("     0.000000 < Endstop X");
  }

  @Test
  void aSearchGoesOnWithWhatComesAndKeepsTheNewest() {
    LogFollower follower = new LogFollower(log, "x", 3);
    for (int i = 0; i < 20; i++) {
      add(RECEIVED, i, "x" + i + "\ny\n");
      assertThat(follower.look().rows()).hasSize(Math.min(3, i + 1)).last().isEqualTo(row(i));
    }
    assertThat(follower.look().rows()).containsExactly(row(17), row(18), row(19));
  }

  private static String row(int i) {
    return String.format(java.util.Locale.ROOT, "%13.6f < x%d", (double) i, i);
  }

  @Test
  void rowsThatAreShownStayAsTheyWereWhileTheLogGoesOn() {
    LogFollower follower = new LogFollower(log, "", 5);
    for (int i = 0; i < 7; i++) {
      add(RECEIVED, i, "line " + i + "\n");
    }
    List<String> shown = follower.look().rows();
    List<String> before = List.copyOf(shown);
    for (int i = 7; i < 70; i++) {
      add(RECEIVED, i, "longer line " + i + "\n");
      follower.look();
    }
    assertThat(shown).isEqualTo(before).last().isEqualTo("     6.000000 < line 6");
  }

  @Test
  void anEndlessLineIsCut() {
    add(RECEIVED, 0, "z".repeat(8000) + "\nshort\n");
    List<String> rows = rows("", 10);
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0)).hasSize(401).endsWith("z…");
    assertThat(rows.get(1)).endsWith("short");
  }

  @Test
  void aLogThatWasClosedShowsWhatIsInMemory() throws IOException {
    add(RECEIVED, 0, "last\n");
    LogFollower searching = new LogFollower(log, "last", 10);
    log.close();
    assertThat(rows("", 10)).containsExactly("     0.000000 < last");
    assertThat(searching.look().more()).isFalse();
  }
}
