package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.theme.Mode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HabitStoreTest {
  @TempDir Path folder;

  @Test
  void remembersEverything() {
    HabitStore store = new HabitStore(folder.resolve("deep/window.json"));
    Habits habits =
        Habits.first()
            .opened("/a/heron.printer.json")
            .opened("/a/sandpiper.printer.json")
            .with(Mode.DARK)
            .zoomed(1.5)
            .placed(10, 20, 1400, 900, false);
    store.save(habits);
    assertThat(store.read()).isEqualTo(habits);
    assertThat(store.read().recent())
        .containsExactly("/a/sandpiper.printer.json", "/a/heron.printer.json");
  }

  @Test
  void aMissingOrBrokenFileIsAFirstRun() throws Exception {
    Path file = folder.resolve("window.json");
    assertThat(new HabitStore(file).read()).isEqualTo(Habits.first());
    Files.writeString(file, "{ broken");
    assertThat(new HabitStore(file).read()).isEqualTo(Habits.first());
  }

  /** Blanks are fine in JSON: only the limit makes this one unreadable. */
  @Test
  void aFileWithoutEndIsAFirstRun() throws Exception {
    Path file = folder.resolve("window.json");
    new HabitStore(file).save(Habits.first().zoomed(1.5));
    String small = Files.readString(file);
    Files.writeString(file, " ".repeat(2000) + small);
    assertThat(new HabitStore(file).read().zoom()).isEqualTo(1.5);
    Files.writeString(file, " ".repeat(2 << 20) + small);
    assertThat(new HabitStore(file).read()).isEqualTo(Habits.first());
  }

  @Test
  void openingAgainMovesToTheFrontAndOldOnesFallOut() {
    Habits habits = Habits.first();
    for (int i = 0; i < 30; i++) {
      habits = habits.opened("/p" + i);
    }
    habits = habits.opened("/p20");
    assertThat(habits.recent()).hasSize(20).startsWith("/p20", "/p29").doesNotHaveDuplicates();
  }

  @Test
  void zoomStaysWithinReason() {
    assertThat(Habits.first().zoomed(9).zoom()).isEqualTo(2.5);
    assertThat(Habits.first().zoomed(0).zoom()).isEqualTo(0.7);
    assertThat(Habits.first().zoomed(1.2000000001).zoom()).isEqualTo(1.2);
  }
}
