package dev.gantrywright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/**
 * Kills writers with SIGKILL at random moments: every event that was reported as kept is read
 * again, and what was torn is reported and set aside. {@code -Dhistory.kills=200} runs the full
 * count.
 */
class KilledHistoryTest {
  private static final int KILLS = Integer.getInteger("history.kills", 6);

  @TempDir Path folder;

  @Test
  void neverLosesWhatItSaidItKept() throws Exception {
    HistoryFile history = HistoryFile.beside(folder.resolve("heron.printer.json"));
    Random random = new Random(11);
    int torn = 0;
    int events = 0;
    for (int i = 0; i < KILLS; i++) {
      Files.deleteIfExists(history.file());
      List<String> kept = killed(history, i, random);
      byte[] left = Files.readAllBytes(history.file());
      Timeline timeline = history.read();
      List<String> read = timeline.events().stream().map(Event::id).toList();
      assertThat(read).as("kill %d", i).containsAll(kept);
      // At most the one that was written when the kill came is there unreported.
      assertThat(read.size() - kept.size()).isBetween(0, 1);
      boolean cut = !timeline.unread().isEmpty();
      assertThat(timeline.unread()).hasSizeLessThanOrEqualTo(1);
      timeline.unread().forEach(line -> assertThat(line.torn()).isTrue());
      wholeAgain(history, timeline, left, cut);
      torn += cut ? 1 : 0;
      events += read.size();
    }
    System.out.println(
        KILLS + " kills: " + events + " events read, none lost, " + torn + " torn and set aside");
  }

  /** The next append goes on behind the last whole event; the torn bytes stand beside. */
  private static void wholeAgain(HistoryFile history, Timeline before, byte[] left, boolean cut)
      throws Exception {
    int aside = before.setAside();
    Event next =
        history.append(
            new Draft(
                Instant.parse("2026-03-03T12:00:00Z"),
                EventKind.NOTE,
                "",
                new ProfileState(Sha256.of(new byte[0]), ""),
                JsonMapper.shared().createObjectNode()));
    Timeline after = history.read();
    assertThat(after.unread()).isEmpty();
    assertThat(after.events()).hasSize(before.events().size() + 1).endsWith(next);
    assertThat(after.setAside()).isEqualTo(aside + (cut ? 1 : 0));
    if (cut) {
      int from = new String(left, StandardCharsets.ISO_8859_1).lastIndexOf('\n') + 1;
      byte[] all = Files.readAllBytes(history.torn());
      byte[] tail = Arrays.copyOfRange(left, from, left.length);
      assertThat(Arrays.copyOfRange(all, all.length - tail.length - 1, all.length - 1))
          .isEqualTo(tail);
    }
  }

  /** The ids of the events that it said it had kept. */
  private static List<String> killed(HistoryFile history, int seed, Random random)
      throws Exception {
    Process process = start(history, seed);
    List<String> kept = new ArrayList<>();
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII))) {
      long before = System.nanoTime();
      long nanos = 0;
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        kept.add(said.readLine());
        nanos = System.nanoTime() - before;
        before = System.nanoTime();
      }
      TimeUnit.NANOSECONDS.sleep((long) (2 * nanos * random.nextDouble()));
      // Not through the process itself: that would close the stream with what is still in it.
      process.toHandle().destroyForcibly();
      process.waitFor();
      String line;
      while ((line = said.readLine()) != null) {
        if (line.length() == Event.ID_DIGITS) {
          kept.add(line);
        }
      }
    }
    assertThat(kept).isNotEmpty().doesNotContainNull();
    return kept;
  }

  private static Process start(HistoryFile history, int seed) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            HistoryInALoop.class.getName(),
            history.file().toString(),
            Integer.toString(seed))
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
