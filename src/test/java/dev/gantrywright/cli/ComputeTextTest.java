package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What people read: each file is a command line after "$ " and the text that it prints. */
class ComputeTextTest {
  private static final Path GOLDEN = Path.of("src/test/resources/compute");

  static Stream<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(GOLDEN)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void printsWhatTheFileShows(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    int end = text.indexOf('\n');
    String[] args = text.substring(0, end).split(" ");
    assertThat(args[0]).isEqualTo("$");
    CommandRun run = CommandRun.of(Arrays.copyOfRange(args, 1, args.length));
    assertThat(run.err()).isEmpty();
    assertThat(run.out().replace("\r\n", "\n")).isEqualTo(text.substring(end + 1));
    assertThat(run.status()).isZero();
  }
}
