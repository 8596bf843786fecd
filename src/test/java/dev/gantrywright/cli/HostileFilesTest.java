package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files that somebody else made: each is refused with one line, and nothing hangs or leaks. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class HostileFilesTest {
  private static final Path DEMO = Path.of("demo-profiles");

  @TempDir Path dir;

  @BeforeEach
  void workshop() throws IOException {
    try (Stream<Path> all = Files.walk(DEMO)) {
      for (Path from : all.filter(f -> !f.toString().contains("history")).toList()) {
        Path to = dir.resolve(DEMO.relativize(from).toString());
        if (Files.isDirectory(from)) {
          Files.createDirectories(to);
        } else {
          Files.copy(from, to);
        }
      }
    }
  }

  private static void oneLine(CommandRun run, String says) {
    assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().strip().lines()).as(run.err()).hasSize(1);
    assertThat(run.err()).contains(says).hasSizeLessThan(1000);
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  /** A file of that many bytes that takes no room on the disk. */
  private Path sparse(String name, long bytes) throws IOException {
    Path file = dir.resolve(name);
    try (var access = new java.io.RandomAccessFile(file.toFile(), "rw")) {
      access.setLength(bytes);
    }
    return file;
  }

  @Test
  void aProfileOfOneGigabyteIsNotRead() throws Exception {
    oneLine(check(sparse("big.printer.json", 1L << 30)), "larger than 4 MiB");
    oneLine(check(Path.of("/dev/zero")), "is a pipe or a device");
  }

  private static CommandRun check(Path profile) {
    return CommandRun.of("patch", "demo-profiles/rookery-2.3", "--profile", profile.toString());
  }

  @Test
  void aProfileThatIsAPipeDoesNotHang() throws Exception {
    Tool.need("mkfifo");
    Tool.mustRun(dir, "mkfifo", "pipe.printer.json");
    oneLine(check(dir.resolve("pipe.printer.json")), "is a pipe or a device");
  }

  @Test
  void jsonNestedWithoutEndIsOneLine() throws Exception {
    String deep = "{\"format\":1,\"notes\":" + "[".repeat(100_000);
    oneLine(check(file("deep.printer.json", deep)), "deep.printer.json");
    Path map = file("deep.names.json", "{\"fields\":" + "[".repeat(100_000));
    oneLine(names(map), "deep.names.json");
  }

  @Test
  void numbersWithoutEndAreOneLine() throws Exception {
    String number = "{\"format\":1,\"serial\":{\"baud\":" + "9".repeat(100_000) + "}}";
    oneLine(check(file("long.printer.json", number)), "long.printer.json");
  }

  private CommandRun names(Path map) {
    return CommandRun.of(
        "patch",
        dir.resolve("rookery-2.3").toString(),
        "--profile",
        dir.resolve("sandpiper.printer.json").toString(),
        "--names",
        map.toString());
  }

  @Test
  void aNameMapIsBoundedToo() throws Exception {
    oneLine(names(sparse("big.names.json", 1L << 30)), "larger than 16 MiB");
    Files.write(dir.resolve("latin.names.json"), new byte[] {'{', (byte) 0xFF, '}'});
    oneLine(names(dir.resolve("latin.names.json")), "is no UTF-8 text");
    Tool.need("mkfifo");
    Tool.mustRun(dir, "mkfifo", "pipe.names.json");
    oneLine(names(dir.resolve("pipe.names.json")), "is a pipe or a device");
  }

  @Test
  void aNameMapReachesNoFileOutsideTheFolder() throws Exception {
    String secret = "#define NEST_TITLE \"kept to itself\"\n";
    Path outside = file("secret.h", secret);
    for (String path : List.of("../secret.h", outside.toString())) {
      String map = Files.readString(dir.resolve("rookery-2.3.names.json"));
      Path lured =
          file("lured.names.json", map.replaceFirst("config/nest.h", path.replace("\\", "/")));
      CommandRun run = names(lured);
      assertThat(run.out() + run.err()).doesNotContain("kept to itself", "b/../", "\tat ");
      assertThat(outside).hasContent(secret);
    }
  }

  @Test
  void anExportIntoTheFirmwareFolderThroughALinkIsRefused() throws Exception {
    Path link = Files.createSymbolicLink(dir.resolve("link"), dir.resolve("rookery-2.3"));
    for (Path out : List.of(link.resolve("out"), dir.resolve("rookery-2.3/out"), link)) {
      CommandRun run =
          CommandRun.of(
              "patch",
              dir.resolve("rookery-2.3").toString(),
              "--set",
              "NEST_TITLE=\"x\"",
              "--out",
              out.toString());
      assertThat(run.status()).as(run.err()).isNotZero();
      assertThat(run.err()).doesNotContain("\tat ");
      assertThat(dir.resolve("rookery-2.3/out")).doesNotExist();
    }
  }

  @Test
  void anImageThatIsAPipeOrEndlessIsOneLine() throws Exception {
    oneLine(CommandRun.of("image", "/dev/zero"), "is a pipe or a device");
    oneLine(
        CommandRun.of("image", sparse("huge.bin", 4L << 30).toString()), "is larger than 64 MiB");
    Tool.need("mkfifo");
    Tool.mustRun(dir, "mkfifo", "pipe.bin");
    oneLine(CommandRun.of("image", dir.resolve("pipe.bin").toString()), "is a pipe or a device");
  }

  @Test
  void aHeaderOfGigabytesIsOneLine() throws Exception {
    oneLine(
        CommandRun.of("macros", sparse("huge.h", 4L << 30).toString()), "is larger than 64 MiB");
  }
}
