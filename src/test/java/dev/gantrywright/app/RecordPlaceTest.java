package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Names of boards and printers become folders, never ways out. */
class RecordPlaceTest {
  private static final Path RECORDS = Path.of("/records");

  @Test
  void namesBecomeFolders() {
    assertThat(RecordPlace.of(RECORDS, "Fulmar M4")).isEqualTo(RECORDS.resolve("fulmar-m4"));
    assertThat(RecordPlace.of(RECORDS, "../..")).isEqualTo(RECORDS.resolve("unnamed"));
    assertThat(RecordPlace.of(RECORDS, null)).isEqualTo(RECORDS.resolve("unnamed"));
  }

  @Test
  void recordsLieInTheUsersDataFolder() {
    assertThat(RecordPlace.ofThisUser()).isEqualTo(Places.ofThisUser().data().resolve("records"));
  }
}
