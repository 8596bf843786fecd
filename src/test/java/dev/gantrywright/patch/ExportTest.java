package dev.gantrywright.patch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.gantrywright.board.Tool;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.FolderException;
import dev.gantrywright.patch.ExportException.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ExportTest {
  @TempDir Path dir;
  private Path source;

  @BeforeEach
  void folder() throws IOException {
    source = Files.createDirectories(dir.resolve("firmware"));
    Files.createDirectories(source.resolve("config/deep"));
    Files.createDirectories(source.resolve("empty"));
    Files.writeString(source.resolve("config/wing.h"), "#define WING_SPAN 12 // cm\r\n");
    Files.writeString(source.resolve("config/deep/tail.h"), "#define TAIL 3\n");
    Files.writeString(source.resolve("Makefile"), "all:\n");
    Files.write(source.resolve("blob.bin"), new byte[] {0, 1, 2, (byte) 200});
  }

  private PatchPlan plan(String... sets) throws FolderException {
    List<HandChange> changes = new ArrayList<>();
    for (String set : sets) {
      changes.add(HandChange.set(set));
    }
    return PatchPlan.of(changes, FirmwareFolder.read(source));
  }

  private static Manifest write(PatchPlan plan, Path target) throws ExportException {
    return Export.write(plan, target, false, ExportProgress.none(), () -> false);
  }

  private static TreeMap<String, String> contents(Path root) throws IOException {
    TreeMap<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.toList()) {
        String value =
            Files.isSymbolicLink(file)
                ? "-> " + Files.readSymbolicLink(file)
                : Files.isDirectory(file)
                    ? "folder"
                    : Sha256.of(Files.readAllBytes(file))
                        + Files.getLastModifiedTime(file).toMillis();
        all.put(root.relativize(file).toString(), value);
      }
    }
    return all;
  }

  private static ExportException refusal(PatchPlan plan, Path target) {
    return catchThrowableOfType(ExportException.class, () -> write(plan, target));
  }

  @Test
  void copiesTheWholeFolderAndChangesOnlyThePlannedLines() throws Exception {
    TreeMap<String, String> sourceBefore = contents(source);
    Path target = dir.resolve("out/patched");
    Manifest manifest = write(plan("WING_SPAN=14"), target);

    assertThat(Files.readString(target.resolve("config/wing.h")))
        .isEqualTo("#define WING_SPAN 14 // cm\r\n");
    TreeMap<String, String> copied = contents(target);
    copied.remove(Manifest.FILE);
    copied.remove("config/wing.h");
    TreeMap<String, String> rest = contents(source);
    rest.remove("config/wing.h");
    assertThat(copied).isEqualTo(rest);
    assertThat(contents(source)).as("the source is never written to").isEqualTo(sourceBefore);
    assertThat(manifest.files()).hasSize(1);
    try (Stream<Path> beside = Files.list(target.getParent())) {
      assertThat(beside).containsExactly(target);
    }
  }

  @Test
  void theManifestSaysWhatChangedAndWhy() throws Exception {
    Path target = dir.resolve("patched");
    write(plan("WING_SPAN=14"), target);
    JsonNode manifest =
        JsonMapper.shared().readTree(Files.readString(target.resolve(Manifest.FILE)));
    JsonNode file = manifest.get("files").get(0);
    assertThat(file.get("path").asString()).isEqualTo("config/wing.h");
    assertThat(file.get("sha256Before").asString())
        .isEqualTo(Sha256.of(Files.readAllBytes(source.resolve("config/wing.h"))));
    assertThat(file.get("sha256After").asString())
        .isEqualTo(Sha256.of(Files.readAllBytes(target.resolve("config/wing.h"))));
    JsonNode line = file.get("lines").get(0);
    assertThat(line.get("line").asInt()).isEqualTo(1);
    assertThat(line.get("macro").asString()).isEqualTo("WING_SPAN");
    assertThat(line.get("value").asString()).isEqualTo("--set WING_SPAN=14");
    assertThat(line.get("after").asString()).contains("14");
  }

  @Test
  void refusesPlacesThatWouldHurt() throws Exception {
    PatchPlan plan = plan("TAIL=4");
    Path full = Files.createDirectories(dir.resolve("full"));
    Files.writeString(full.resolve("mine.txt"), "keep");
    Path file = Files.writeString(dir.resolve("file"), "x");
    Path link = Files.createSymbolicLink(dir.resolve("link"), full);
    Path inward = Files.createSymbolicLink(dir.resolve("inward"), source);
    for (Path target :
        List.of(source, source.resolve("new"), dir, full, file, link, inward.resolve("new"))) {
      ExportException refused = refusal(plan, target);
      assertThat(refused).as(target.toString()).isNotNull();
      assertThat(refused.kind()).isEqualTo(Kind.REFUSED);
      assertThat(refused.getMessage()).startsWith(target.toString()).doesNotContain("\n");
    }
    assertThat(Files.readString(full.resolve("mine.txt"))).isEqualTo("keep");
    assertThat(source.resolve("new")).doesNotExist();
  }

  @Test
  void replacesAFullFolderOnlyWhenTold() throws Exception {
    Path full = Files.createDirectories(dir.resolve("full"));
    Files.writeString(full.resolve("old.txt"), "old");
    Export.write(plan("TAIL=4"), full, true, ExportProgress.none(), () -> false);
    assertThat(full.resolve("old.txt")).doesNotExist();
    assertThat(Files.readString(full.resolve("config/deep/tail.h"))).contains("4");
  }

  @Test
  void writesIntoAnEmptyFolder() throws Exception {
    Path empty = Files.createDirectories(dir.resolve("nothing"));
    write(plan("TAIL=4"), empty);
    assertThat(empty.resolve("Makefile")).exists();
  }

  @Test
  void keepsLinksThatStayInsideAndLeavesOutWhatLeadsOut() throws Exception {
    Files.writeString(dir.resolve("secret"), "outside");
    Files.createSymbolicLink(source.resolve("alias.h"), Path.of("config/wing.h"));
    Files.createSymbolicLink(source.resolve("leak"), Path.of("../secret"));
    Files.createSymbolicLink(source.resolve("config/up"), Path.of("../.."));
    Files.createSymbolicLink(source.resolve("absolute"), dir.resolve("secret"));
    Path target = dir.resolve("patched");
    Manifest manifest = write(plan("TAIL=4"), target);
    assertThat(Files.readSymbolicLink(target.resolve("alias.h")))
        .isEqualTo(Path.of("config/wing.h"));
    for (String gone : List.of("leak", "config/up", "absolute")) {
      assertThat(Files.exists(target.resolve(gone), java.nio.file.LinkOption.NOFOLLOW_LINKS))
          .as(gone)
          .isFalse();
    }
    assertThat(manifest.leftOut()).hasSize(3);
  }

  @Test
  void cancelLeavesNothing() throws Exception {
    Path target = dir.resolve("patched");
    int[] asked = {0};
    ExportException stopped =
        catchThrowableOfType(
            ExportException.class,
            () ->
                Export.write(
                    plan("TAIL=4"), target, false, ExportProgress.none(), () -> ++asked[0] > 2));
    assertThat(stopped.kind()).isEqualTo(Kind.CANCELLED);
    try (Stream<Path> left = Files.list(dir)) {
      assertThat(left).containsExactly(source);
    }
  }

  @Test
  void tellsProgressFileByFile() throws Exception {
    List<String> told = new ArrayList<>();
    Export.write(
        plan("TAIL=4"),
        dir.resolve("patched"),
        false,
        (done, total, path) -> told.add(done + "/" + total),
        () -> false);
    assertThat(told).containsExactly("1/4", "2/4", "3/4", "4/4");
  }

  @Test
  void aFileChangedMeanwhileStopsTheExport() throws Exception {
    PatchPlan plan = plan("TAIL=4");
    Files.writeString(source.resolve("config/deep/tail.h"), "#define TAIL 9\n");
    ExportException stopped = refusal(plan, dir.resolve("patched"));
    assertThat(stopped.getMessage()).contains("tail.h").contains("read the folder again");
    assertThat(dir.resolve("patched")).doesNotExist();
  }

  @Test
  void keepsPermissionsOfRewrittenFiles() throws Exception {
    Path file = source.resolve("config/wing.h");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r-----"));
    Path target = dir.resolve("patched");
    write(plan("WING_SPAN=14"), target);
    assertThat(
            PosixFilePermissions.toString(
                Files.getPosixFilePermissions(target.resolve("config/wing.h"))))
        .isEqualTo("r--r-----");
  }

  @Test
  void aFullDiskIsOneClearLine() throws Exception {
    Tool.need("mount", "umount");
    Path small = Files.createDirectories(dir.resolve("small"));
    Tool.Output mounted =
        Tool.run(dir, "mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", small.toString());
    if (mounted.exit() != 0 && Boolean.getBoolean("board.required")) {
      assertThat(mounted.out()).as("mounting needs root").isEmpty();
    }
    assumeTrue(mounted.exit() == 0, "mounting a small file system needs root");
    try {
      Files.write(source.resolve("large.bin"), new byte[200_000]);
      ExportException full = refusal(plan("TAIL=4"), small.resolve("patched"));
      assertThat(full.kind()).isEqualTo(Kind.FAILED);
      assertThat(full.getMessage()).contains("the disk is full").doesNotContain("\n");
      try (Stream<Path> left = Files.list(small)) {
        assertThat(left).isEmpty();
      }
    } finally {
      Tool.run(dir, "umount", small.toString());
    }
  }

  @Test
  void aReadOnlyPlaceIsOneClearLine() throws Exception {
    Tool.need("mount", "umount");
    Path small = Files.createDirectories(dir.resolve("frozen"));
    Tool.Output mounted =
        Tool.run(dir, "mount", "-t", "tmpfs", "-o", "ro,size=64k", "tmpfs", small.toString());
    if (mounted.exit() != 0 && Boolean.getBoolean("board.required")) {
      assertThat(mounted.out()).as("mounting needs root").isEmpty();
    }
    assumeTrue(mounted.exit() == 0, "mounting a read-only file system needs root");
    try {
      ExportException failed = refusal(plan("TAIL=4"), small.resolve("patched"));
      assertThat(failed.kind()).isEqualTo(Kind.FAILED);
      assertThat(failed.getMessage()).contains("read-only").doesNotContain("\n");
    } finally {
      Tool.run(dir, "umount", small.toString());
    }
  }
}
