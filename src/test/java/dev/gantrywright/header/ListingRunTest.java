package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many files at once come back in their order, and one that cannot be read stops none. */
class ListingRunTest {
  private static final int MANY = 60;

  @TempDir private Path dir;

  private List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MANY; i++) {
      Path file = dir.resolve("perch" + i + ".h");
      if (i % 7 != 3) {
        Files.writeString(file, "#define PERCH " + i + "\n");
      }
      files.add(file);
    }
    return files;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void inTheOrderOfTheFilesWithHoweverManyHelpers(int helpers) throws IOException {
    ExecutorService pool = Executors.newFixedThreadPool(3);
    List<String> heard = new ArrayList<>();
    try {
      LiveMacros macros = new LiveMacros(List.of(), List.of());
      ListingRun.run(macros, files(), pool, helpers, hearing(heard));
    } finally {
      pool.shutdownNow();
    }
    assertThat(heard).hasSize(MANY);
    for (int i = 0; i < MANY; i++) {
      assertThat(heard.get(i))
          .isEqualTo(
              i % 7 == 3
                  ? "perch" + i + ".h: no such file or folder"
                  : "#define PERCH " + i + "\n");
    }
  }

  private static ListingRun.Receiver hearing(List<String> heard) {
    return new ListingRun.Receiver() {
      @Override
      public void listed(MacroListing listing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        listing.writeTo(out);
        assertThat(out.toByteArray()).isEqualTo(listing.lines());
        heard.add(out.toString());
      }

      @Override
      public void unreadable(Path file, IOException why) {
        heard.add(file.getFileName() + ": " + IoReason.of(why));
      }
    };
  }
}
