package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlacesTest {
  private static final Path HOME = Path.of("/home/ada");

  @Test
  void dataGoesWhereTheSystemKeepsIt() {
    assertThat(data(Map.of(), "Linux")).isEqualTo(HOME.resolve(".local/share/gantrywright"));
    assertThat(data(Map.of("XDG_DATA_HOME", "/data"), "Linux"))
        .isEqualTo(Path.of("/data/gantrywright"));
    assertThat(data(Map.of("XDG_DATA_HOME", "not/absolute"), "Linux"))
        .isEqualTo(HOME.resolve(".local/share/gantrywright"));
    assertThat(data(Map.of("APPDATA", "/roaming"), "Windows 11"))
        .isEqualTo(Path.of("/roaming/Gantrywright"));
    assertThat(data(Map.of(), "Mac OS X"))
        .isEqualTo(HOME.resolve("Library/Application Support/Gantrywright"));
  }

  private static Path data(Map<String, String> environment, String system) {
    return new Places(environment, HOME, system).data();
  }
}
