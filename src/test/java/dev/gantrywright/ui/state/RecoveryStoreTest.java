package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryStoreTest {
  private static final Path HERON = Path.of("demo-profiles/heron.printer.json");

  @TempDir Path folder;

  @Test
  void keepsFindsAndDrops() throws Exception {
    RecoveryStore store = new RecoveryStore(folder.resolve("recovery"));
    PrinterProfile edited = ProfileValues.with(ProfileStore.read(HERON), "axes.x.stepsPerMm", 80);
    assertThat(store.find(HERON)).isEmpty();
    store.keep(HERON, edited);
    store.keep(HERON, edited);
    assertThat(store.find(HERON)).contains(edited);
    assertThat(store.find(HERON.toAbsolutePath())).contains(edited);
    store.drop(HERON);
    assertThat(store.find(HERON)).isEmpty();
    assertThat(Files.list(folder.resolve("recovery"))).isEmpty();
  }

  /** What is prepared is the text that will be kept, and nothing is kept yet. */
  @Test
  void preparingWritesNothing() throws Exception {
    RecoveryStore store = new RecoveryStore(folder.resolve("recovery"));
    PrinterProfile profile = ProfileStore.read(HERON);
    int length = store.prepare(profile);
    assertThat(folder.resolve("recovery")).doesNotExist();
    store.keep(HERON, profile);
    try (var files = Files.list(folder.resolve("recovery"))) {
      assertThat(Files.size(files.findFirst().orElseThrow())).isEqualTo(length);
    }
  }

  @Test
  void filesOfTheSameNameElsewhereAreOthers() throws Exception {
    RecoveryStore store = new RecoveryStore(folder);
    store.keep(HERON, ProfileStore.read(HERON));
    assertThat(store.find(folder.resolve("heron.printer.json"))).isEmpty();
  }

  @Test
  void somethingWithoutEndIsNothing() throws Exception {
    RecoveryStore store = new RecoveryStore(folder);
    store.keep(HERON, ProfileStore.read(HERON));
    Path kept;
    try (var files = Files.list(folder)) {
      kept = files.findFirst().orElseThrow();
    }
    Files.writeString(kept, Files.readString(kept) + " ".repeat(5 << 20));
    assertThat(store.find(HERON)).isEmpty();
  }

  @Test
  void somethingUnreadableIsNothing() throws Exception {
    RecoveryStore store = new RecoveryStore(folder);
    store.keep(HERON, ProfileStore.read(HERON));
    try (var files = Files.list(folder)) {
      Files.writeString(files.findFirst().orElseThrow(), "{");
    }
    assertThat(store.find(HERON)).isEmpty();
  }
}
