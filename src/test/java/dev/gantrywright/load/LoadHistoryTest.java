package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was loaded comes back, with what to look for on the card. */
class LoadHistoryTest {
  @TempDir Path folder;

  @Test
  void entriesComeBack() throws IOException {
    Path file = folder.resolve("deep/loads.jsonl");
    LoadHistory history = new LoadHistory(file);
    assertThat(history.last()).isEmpty();
    Instant when = Instant.parse("2026-03-01T12:00:00Z");
    PendingLoad pending =
        new PendingLoad(
            "FULMAR.IMG",
            "ab",
            when,
            LoaderSign.RENAMED,
            Optional.of("FULMAR.OLD"),
            Optional.of("cd"));
    LoadHistory.Entry card =
        new LoadHistory.Entry(when, "out/a.bin", "ab", "/media/card", "", Optional.of(pending));
    LoadHistory.Entry command =
        new LoadHistory.Entry(when, "out/b.hex", "ef", "flash -w", "bench", Optional.empty());
    history.add(card);
    history.add(command);
    Files.writeString(file, "{\"when\":\"torn\n", StandardOpenOption.APPEND);
    assertThat(history.all()).containsExactly(card, command);
    assertThat(history.last()).hasValue(command);
  }
}
