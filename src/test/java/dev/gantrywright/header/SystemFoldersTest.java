package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The compiler's own order of folders on a Unix-like machine, on a made one. */
class SystemFoldersTest {
  @TempDir private Path root;

  private void folder(String path) throws IOException {
    Files.createDirectories(root.resolve(path));
  }

  @ParameterizedTest
  @CsvSource({
    "amd64, x86_64-linux-gnu",
    "x86_64, x86_64-linux-gnu",
    "aarch64, aarch64-linux-gnu",
    "arm, arm-linux-gnueabihf",
    "riscv64, riscv64-linux-gnu",
    "s390x, s390x-linux-gnu"
  })
  void theNewestCompilersOwnFolderComesFirst(String architecture, String triplet)
      throws IOException {
    folder("usr/lib/gcc/" + triplet + "/9.4.0/include");
    folder("usr/lib/gcc/" + triplet + "/12/include");
    folder("usr/lib/gcc/" + triplet + "/notes/include");
    folder("usr/local/include");
    folder("usr/include/" + triplet);
    assertThat(
            SystemFolders.of(root, architecture).stream().map(root::relativize).map(Path::toString))
        .containsExactly(
            "usr/lib/gcc/" + triplet + "/12/include",
            "usr/local/include",
            "usr/include/" + triplet,
            "usr/include");
  }

  @Test
  void whatIsNotThereIsLeftOut() throws IOException {
    assertThat(SystemFolders.of(root, "amd64")).isEmpty();
    folder("usr/include");
    assertThat(SystemFolders.of(root, "amd64")).containsExactly(root.resolve("usr/include"));
  }
}
