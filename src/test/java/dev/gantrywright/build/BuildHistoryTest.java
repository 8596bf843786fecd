package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was added comes back; a torn line costs itself only. */
class BuildHistoryTest {
  @TempDir Path folder;

  private static BuildHistory.Entry entry(BuildResult.Outcome outcome, int seconds) {
    return new BuildHistory.Entry(
        Instant.parse("2026-03-01T10:00:00Z").plusSeconds(seconds),
        Duration.ofSeconds(seconds),
        outcome,
        1,
        "make 'TARGET=fulmar m4'",
        0,
        3,
        "out/a.bin",
        "ab12");
  }

  @Test
  void entriesComeBackInOrder() throws IOException {
    BuildHistory history = new BuildHistory(folder.resolve("deep/builds.jsonl"));
    assertThat(history.all()).isEmpty();
    history.add(entry(BuildResult.Outcome.BUILT, 4));
    history.add(entry(BuildResult.Outcome.FAILED, 9));
    assertThat(history.all())
        .containsExactly(entry(BuildResult.Outcome.BUILT, 4), entry(BuildResult.Outcome.FAILED, 9));
    assertThat(history.usual()).hasValue(Duration.ofSeconds(4));
  }

  @Test
  void aTornLineCostsItselfOnly() throws IOException {
    Path file = folder.resolve("builds.jsonl");
    BuildHistory history = new BuildHistory(file);
    history.add(entry(BuildResult.Outcome.BUILT, 4));
    Files.writeString(file, "{\"started\":\"2026-\n", StandardOpenOption.APPEND);
    history.add(entry(BuildResult.Outcome.BUILT, 5));
    assertThat(history.all()).hasSize(2);
  }
}
