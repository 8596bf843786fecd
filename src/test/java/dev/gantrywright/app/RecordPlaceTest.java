package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Each system's place for a program's own records. */
class RecordPlaceTest {
  private static final Path HOME = Path.of("/home/kestrel");

  @Test
  void followsTheSystem() {
    assertThat(RecordPlace.of(Map.of(), "Linux", HOME))
        .isEqualTo(HOME.resolve(".local/state/gantrywright"));
    assertThat(RecordPlace.of(Map.of("XDG_STATE_HOME", "/s"), "Linux", HOME))
        .isEqualTo(Path.of("/s/gantrywright"));
    assertThat(RecordPlace.of(Map.of(), "Mac OS X", HOME))
        .isEqualTo(HOME.resolve("Library/Application Support/Gantrywright"));
    assertThat(RecordPlace.of(Map.of(), "Windows 11", HOME))
        .isEqualTo(HOME.resolve("AppData/Local/Gantrywright"));
    assertThat(RecordPlace.of(Map.of("GANTRYWRIGHT_RECORDS", "/r"), "Linux", HOME))
        .isEqualTo(Path.of("/r"));
  }

  @Test
  void namesBecomeFolders() {
    assertThat(RecordPlace.of(HOME, "Fulmar M4")).isEqualTo(HOME.resolve("fulmar-m4"));
    assertThat(RecordPlace.of(HOME, "../..")).isEqualTo(HOME.resolve("unnamed"));
    assertThat(RecordPlace.of(HOME, null)).isEqualTo(HOME.resolve("unnamed"));
  }
}
