package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

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
