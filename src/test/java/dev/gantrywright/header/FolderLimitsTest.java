package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder that is not meant well, or not meant at all. */
class FolderLimitsTest {
  @TempDir private Path dir;

  private FolderReader.Contents read(int files, int entries, long bytes) throws FolderException {
    return FolderReader.read(
        dir, (done, total, path) -> {}, new FolderReader.Limits(files, entries, bytes));
  }

  @Test
  void aFolderBeyondTheLimitsIsOneLineAndNeverReadInPart() throws Exception {
    for (int i = 0; i < 5; i++) {
      Files.writeString(dir.resolve(i + ".h"), "#define A\n");
      Files.writeString(dir.resolve(i + ".txt"), "");
    }
    assertThat(read(5, 10, 50).files()).hasSize(5);
    assertThatThrownBy(() -> read(4, 10, 50))
        .isInstanceOf(FolderException.class)
        .hasMessage(
            dir
                + ": holds more than 4 headers and sources; give the firmware's own folder,"
                + " not one above it");
    assertThatThrownBy(() -> read(5, 9, 50)).hasMessageContaining("more than 9 entries");
    assertThatThrownBy(() -> read(5, 10, 49)).hasMessageContaining("MiB of headers and sources");
  }

  /** Ends the reading where so many entries are listed; counts what it is told of. */
  private static final class Ending implements Progress {
    private final int last;
    private final List<Integer> listed = new ArrayList<>();
    private final List<String> files = new ArrayList<>();

    Ending(int last) {
      this.last = last;
    }

    @Override
    public void listed(int entries) {
      listed.add(entries);
      Progress.until(() -> entries >= last).listed(entries);
    }

    @Override
    public void read(int done, int total, String path) {
      files.add(path);
    }
  }

  /** 20 entries at the top, and 10 in each of two folders below. */
  private void broad() throws Exception {
    for (int i = 0; i < 18; i++) {
      Files.writeString(dir.resolve(i + ".h"), "#define A\n");
    }
    for (String below : List.of("roost", "perch")) {
      Files.createDirectory(dir.resolve(below));
      for (int i = 0; i < 10; i++) {
        Files.writeString(dir.resolve(below).resolve(i + ".h"), "#define A\n");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 7, 20, 21, 40})
  void aListingThatIsEndedStopsAtThatEntry(int last) throws Exception {
    broad();
    Ending ending = new Ending(last);
    assertThatThrownBy(() -> FirmwareFolder.read(dir, Map.of(), ending))
        .isInstanceOf(CancellationException.class)
        .hasMessage("listing ended after " + last + " entries");
    assertThat(ending.listed).last().isEqualTo(last);
    assertThat(ending.listed.stream().filter(count -> count == last)).hasSize(1);
    assertThat(ending.files).isEmpty();
  }

  @Test
  void eachEntryIsToldBeforeItIsListedAndBeforeItIsLookedAt() throws Exception {
    broad();
    Ending ending = new Ending(Integer.MAX_VALUE);
    assertThat(FirmwareFolder.read(dir, Map.of(), ending).headers()).hasSize(38);
    assertThat(ending.listed).isSorted().hasSize(2 * 40);
    assertThat(ending.listed).contains(1).last().isEqualTo(40);
    assertThat(ending.files).hasSize(38);
  }

  @Test
  void whatLiesTooDeepIsNamed() throws Exception {
    String deep = String.join("/", IntStream.range(0, 70).mapToObj(i -> "d").toList());
    Files.createDirectories(dir.resolve(deep));
    Files.writeString(dir.resolve(deep).resolve("a.h"), "#define A\n");
    FolderReader.Contents contents = read(5, 1000, 50);
    assertThat(contents.files()).isEmpty();
    assertThat(contents.problems())
        .singleElement()
        .asString()
        .contains("lies more than 64 folders deep");
  }

  @Test
  @Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void aPipeAndADeviceAreNotOpened() throws Exception {
    Tool.need("mkfifo");
    Files.writeString(dir.resolve("a.h"), "#define A 1\n");
    Tool.mustRun(dir, "mkfifo", "pipe.h");
    Files.createSymbolicLink(dir.resolve("endless.h"), Path.of("/dev/zero"));
    FirmwareFolder folder = FirmwareFolder.read(dir);
    assertThat(folder.headers()).extracting(HeaderDocument::path).containsExactly("a.h");
    assertThat(folder.problems()).hasSize(1).first().asString().contains("leads out");
  }
}
