package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What GNU C listed for the stress corpus stands beside it ({@code listing/*.txt}), so that a
 * machine without a compiler tells a wrong listing too. {@code -Dgolden.update=true} asks the
 * compiler again, never this program. Recorded with gcc 12.2.0, {@code -undef -E -dM}.
 */
class ListingGoldenTest {
  private static final Path FOLDER = Path.of("src/test/resources/dev/gantrywright/header");

  @TempDir private Path dir;

  static Stream<String> names() {
    return Stream.concat(Corpus.names().stream(), Stream.of("numbers.h", "queries.h", "gnu.h"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyHeaderIsListedAsTheCompilerDid(String name) throws IOException {
    byte[] header = Gnu.resource("corpus/" + name);
    Path golden = FOLDER.resolve("listing").resolve(name.replace(".h", ".txt"));
    if (Boolean.getBoolean("golden.update")) {
      Files.write(golden, String.join("\n", theirs(header)).getBytes(StandardCharsets.ISO_8859_1));
    }
    List<String> theirs = Files.readAllLines(golden, StandardCharsets.ISO_8859_1);
    for (LineEnds ends : LineEnds.values()) {
      Path file = Files.write(dir.resolve(ends + ".h"), ends.apply(header));
      byte[] lines = new LiveMacros(List.of(), List.of()).of(file).lines();
      assertThat(Gnu.sorted(lines)).as(ends.name()).isEqualTo(theirs);
    }
  }

  private List<String> theirs(byte[] header) throws IOException {
    Tool.need("gcc");
    Set<String> predefined = Gnu.predefined();
    Path file = Files.write(dir.resolve("asked.h"), header);
    return Gnu.macros(file, List.of("-w")).lines().stream()
        .filter(line -> !predefined.contains(line))
        .toList();
  }
}
