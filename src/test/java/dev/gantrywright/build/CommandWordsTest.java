package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.board.Tool;
import dev.gantrywright.load.FlashCommand;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a profile says arrives at the program as one word, whatever it holds. */
class CommandWordsTest {
  /** Writes each argument to a file, with a NUL behind it. */
  private static final String KEEP = "for a; do printf '%s\\0' \"$a\"; done > words";

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two words",
        "\"double\" and 'single'",
        "$(touch pwned) `touch pwned` $HOME",
        "a; touch pwned; b && touch pwned | touch pwned",
        "line\ntouch pwned\n",
        "* ? [a-z] ~ {a,b} \\ !1 # %PATH% ^",
        "--help"
      })
  void targetAndFileArriveAsOneWordEach(String text) throws Exception {
    Tool.need("sh");
    List<String> words = List.of("sh", "-c", KEEP, "sh", "{target}", "env={target}", "last");
    assertThat(run(BuildCommand.of(words, folder, Map.of(), text)))
        .isEqualTo(text + "\0env=" + text + "\0last\0");

    Path image = folder.resolve(text);
    FlashCommand flash = FlashCommand.of(List.of("sh", "-c", KEEP, "sh", "{file}", "x"), image);
    assertThat(run(new BuildCommand(flash.words(), folder, Map.of()))).isEqualTo(image + "\0x\0");
    assertThat(folder.resolve("pwned")).doesNotExist();
  }

  private String run(BuildCommand command) throws Exception {
    BuildResult result =
        new BuildRun(command, ArtefactPattern.none(), new BuildListener() {}, Clock.systemUTC())
            .runOnce();
    assertThat(result.exit()).isZero();
    return Files.readString(folder.resolve("words"));
  }

  @Test
  void aPatternThatWouldTakeForEverIsRefused() {
    assertThatThrownBy(() -> ArtefactPattern.of("*a*a*a*a*a*a*a*a*b"))
        .hasMessageContaining("more than 6 stars");
    assertThatThrownBy(() -> ArtefactPattern.of("a".repeat(300))).hasMessageContaining("too long");
    assertThat(ArtefactPattern.of("**/out/**/*-*.bin").text()).isEqualTo("**/out/**/*-*.bin");
  }

  @Test
  void aHistoryOfBuildsBeyondTheLimitIsOneLine() throws Exception {
    Path file = folder.resolve("builds.jsonl");
    try (RandomAccessFile access = new RandomAccessFile(file.toFile(), "rw")) {
      access.setLength((64L << 20) + 1);
    }
    assertThatThrownBy(() -> new BuildHistory(file).all())
        .hasMessage(file + ": is larger than 64 MiB; move it away to begin a new one");
  }
}
