package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every dialogue file, played in made-up time. */
class DialogueTest {
  private static final Path FOLDER = Path.of("src/test/resources/link/dialogues");

  static List<String> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void goesAsWritten(String file) throws IOException {
    assertThat(file).endsWith(".txt");
    Dialogue.play(Files.readAllLines(FOLDER.resolve(file)));
  }
}
