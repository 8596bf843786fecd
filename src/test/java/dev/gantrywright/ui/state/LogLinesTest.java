package dev.gantrywright.ui.state;

import static dev.gantrywright.link.LogEntry.Direction.RECEIVED;
import static dev.gantrywright.link.LogEntry.Direction.SENT;
import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.LogEntry;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LogLinesTest {
  private final List<LogEntry> log = new ArrayList<>();

  private void add(LogEntry.Direction way, double seconds, String bytes) {
    log.add(new LogEntry(way, (long) (seconds * 1e9), bytes.getBytes(StandardCharsets.US_ASCII)));
  }

  @Test
  void aReadOfManyLinesIsManyRowsAndALineOfTwoReadsIsOne() {
    add(RECEIVED, 1, "one\ntwo\nth");
    add(SENT, 1.5, "M119\n");
    add(RECEIVED, 2, "ree\n");
    assertThat(LogLines.of(log, "", 10))
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
    assertThat(LogLines.of(log, "", 3))
        .containsExactly("   499.000000 < a499", "   499.000000 < b499", "   500.000000 < begun");
  }

  @Test
  void aSearchLooksThroughAllInAnyCase() {
    add(RECEIVED, 0, "Endstop X\nnothing\n");
    for (int i = 0; i < 100; i++) {
      add(RECEIVED, i, "other\n");
    }
    assertThat(LogLines.of(log, " endSTOP ", 2)).containsExactly("     0.000000 < Endstop X");
  }

  @Test
  void anEndlessLineIsCut() {
    add(RECEIVED, 0, "z".repeat(8000) + "\nshort\n");
    List<String> rows = LogLines.of(log, "", 10);
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0)).hasSize(401).endsWith("z…");
    assertThat(rows.get(1)).endsWith("short");
  }
}
