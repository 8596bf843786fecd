package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoFilesTest {
  static final Path DEMO = Path.of("demo-profiles");

  @ParameterizedTest
  @ValueSource(strings = {"heron", "sandpiper", "guillemot"})
  void aDemoPrinterIsWrittenBackAsItStands(String name) throws Exception {
    Path file = DEMO.resolve(name + ".printer.json");
    assertThat(text(ProfileStore.bytes(ProfileStore.read(file)))).isEqualTo(Files.readString(file));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fulmar-m4", "petrel-81"})
  void aDemoBoardIsWrittenBackAsItStands(String name) throws Exception {
    Path file = DEMO.resolve(name + ".board.json");
    assertThat(text(BoardStore.bytes(BoardStore.read(file)))).isEqualTo(Files.readString(file));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
