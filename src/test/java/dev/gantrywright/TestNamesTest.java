package dev.gantrywright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The build runs classes named {@code …Test}; a test in any other class would never run. */
class TestNamesTest {
  private static final Pattern RUN =
      Pattern.compile(
          "^\\s*@(Test|ParameterizedTest|Property|TestFactory|RepeatedTest)\\b", Pattern.MULTILINE);

  @Test
  void everyClassWithATestIsNamedSoThatItRuns() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      List<Path> unheard =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.toString().endsWith("Test.java"))
              .filter(file -> RUN.matcher(text(file)).find())
              .toList();
      assertThat(unheard).isEmpty();
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
