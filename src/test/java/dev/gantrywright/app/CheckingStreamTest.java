package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.Progress;
import dev.gantrywright.rules.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckingStreamTest {
  private static final Path DEMO = Path.of("demo-profiles");
  private static final Checking CHECKING = Checking.shipped();

  private static List<Path> mixed(Path folder) throws Exception {
    Path broken = folder.resolve("broken.printer.json");
    Files.writeString(broken, "{");
    List<Path> files = new ArrayList<>();
    for (int round = 0; round < 60; round++) {
      files.add(DEMO.resolve("sandpiper.printer.json"));
      files.add(broken);
      files.add(DEMO.resolve("heron.printer.json"));
    }
    return files;
  }

  @Test
  void everyFileHasItsResultInTheOrderGiven(@TempDir Path folder) throws Exception {
    List<Path> files = mixed(folder);
    List<Checking.Result> results = new ArrayList<>();
    assertThat(CHECKING.stream(files, null, result -> result, results::add)).isTrue();
    assertThat(results).extracting(Checking.Result::file).isEqualTo(files);
    for (int at = 0; at < results.size(); at += 3) {
      assertThat(results.get(at).findings().count(Level.ERROR)).isZero();
      assertThat(results.get(at).findings().open())
          .isEqualTo(CHECKING.check(results.get(at).printer()).open());
      assertThat(results.get(at + 1).problem()).contains("broken.printer.json");
      assertThat(results.get(at + 1).printer()).isNull();
      assertThat(results.get(at + 2).findings().open())
          .isEqualTo(CHECKING.check(results.get(at + 2).printer()).open())
          .isNotEmpty();
    }
  }

  /** The listing of the folder stands at its third entry until the user has enough. */
  @Test
  void aListingThatIsHeldUpEndsWithTheRun(@TempDir Path folder) throws Exception {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      files.add(DEMO.resolve("sandpiper.printer.json").toAbsolutePath());
    }
    AtomicInteger entries = new AtomicInteger();
    AtomicInteger read = new AtomicInteger();
    AtomicBoolean stopped = new AtomicBoolean();
    Progress held =
        new Progress() {
          @Override
          public void listed(int listed) {
            stopped.set(entries.incrementAndGet() == 3);
            Progress.until(stopped::get).listed(listed);
          }

          @Override
          public void read(int done, int total, String path) {
            read.incrementAndGet();
          }
        };
    List<Object> results = new ArrayList<>();
    boolean whole =
        Checking.stream(() -> CHECKING, files, null, held, result -> result, results::add);
    assertThat(whole).isFalse();
    assertThat(results).isEmpty();
    assertThat(entries).hasValue(3);
    assertThat(read).hasValue(0);
  }

  @Test
  void printersShareWhatTheyShare(@TempDir Path folder) throws Exception {
    List<Object> folders = new ArrayList<>();
    CHECKING.stream(mixed(folder), null, Checking.Result::printer, folders::add);
    assertThat(
            folders.stream()
                .map(OpenPrinter.class::cast)
                .filter(printer -> printer != null)
                .map(printer -> System.identityHashCode(printer.folder()))
                .distinct())
        .hasSize(1);
  }
}
