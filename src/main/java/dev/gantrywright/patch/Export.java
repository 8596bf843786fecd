package dev.gantrywright.patch;

import dev.gantrywright.patch.ExportException.Kind;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * Writes the patched folder: the firmware folder copied whole with the planned files in their new
 * form, and a {@link Manifest}. It grows under a temporary name beside its place, is flushed to the
 * disk and renamed at the end, so that a kill at any moment leaves no folder there or the whole
 * one. The firmware folder is only read.
 */
public final class Export {
  private final Path source;
  private final Map<String, byte[]> before;
  private final Map<String, byte[]> after;
  private final Manifest manifest;
  private final ExportProgress progress;
  private final BooleanSupplier cancelled;

  private Export(
      Path source,
      Map<String, byte[]> before,
      Map<String, byte[]> after,
      Manifest manifest,
      ExportProgress progress,
      BooleanSupplier cancelled) {
    this.source = source;
    this.before = before;
    this.after = after;
    this.manifest = manifest;
    this.progress = progress;
    this.cancelled = cancelled;
  }

  /**
   * Writes a plan's patched folder.
   *
   * @param replace whether a non-empty folder at the place may be replaced
   * @param cancelled asked before each file
   * @return the manifest that was written
   * @throws ExportException with the one line to show; nothing stays behind
   */
  public static Manifest write(
      PatchPlan plan,
      Path target,
      boolean replace,
      ExportProgress progress,
      BooleanSupplier cancelled)
      throws ExportException {
    Path source = plan.folder().root();
    Path place = ExportTarget.checked(source, target, replace);
    FolderCopy copy;
    try {
      copy = FolderCopy.list(source);
    } catch (IOException failed) {
      throw new ExportException(Kind.FAILED, IoLine.of(source, failed), failed);
    }
    Manifest manifest = plan.manifest(copy.leftOut());
    new Export(source, plan.before(), plan.after(), manifest, progress, cancelled)
        .run(copy, place, target);
    return manifest;
  }

  private void run(FolderCopy copy, Path place, Path asked) throws ExportException {
    Path partial =
        place.resolveSibling(
            "." + place.getFileName() + ".partial-" + ProcessHandle.current().pid());
    try {
      delete(partial);
      fill(copy, partial);
      settle(partial, place);
    } catch (IOException failed) {
      clear(partial, failed);
      throw new ExportException(Kind.FAILED, IoLine.of(asked, failed), failed);
    } catch (ExportException stopped) {
      clear(partial, stopped);
      throw stopped;
    }
  }

  private void fill(FolderCopy copy, Path partial) throws IOException, ExportException {
    copy.skeleton(partial);
    List<Path> files = copy.files();
    int done = 0;
    for (Path file : files) {
      if (cancelled.getAsBoolean()) {
        throw new ExportException(Kind.CANCELLED, "cancelled; the patched folder was not written");
      }
      String path = FolderCopy.named(file);
      Path written = partial.resolve(file.toString());
      byte[] bytes = after.get(path);
      if (bytes == null) {
        copy.copy(file, partial);
        flush(written);
      } else {
        Path read = source.resolve(path);
        unchangedSince(path, Files.readAllBytes(read));
        write(written, bytes);
        FolderCopy.permissions(read, written);
      }
      progress.written(++done, files.size(), path);
    }
    write(partial.resolve(Manifest.FILE), manifest.bytes());
    flushFolder(partial);
  }

  private void unchangedSince(String path, byte[] now) throws ExportException {
    if (!Arrays.equals(now, before.get(path))) {
      throw new ExportException(
          Kind.FAILED,
          source.resolve(path) + ": changed on the disk since it was read; read the folder again");
    }
  }

  /** Renames the whole folder into place, an older one aside first and away after. */
  private static void settle(Path partial, Path place) throws IOException {
    Path aside = null;
    if (Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !empty(place)) {
      aside = place.resolveSibling(partial.getFileName() + ".old");
      Files.move(place, aside, StandardCopyOption.ATOMIC_MOVE);
    }
    Files.move(partial, place, StandardCopyOption.ATOMIC_MOVE);
    flushFolder(place.getParent());
    if (aside != null) {
      delete(aside);
    }
  }

  private static boolean empty(Path folder) throws IOException {
    try (var inside = Files.list(folder)) {
      return inside.findAny().isEmpty();
    }
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.WRITE,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  private static void flush(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

  /** Folders can be flushed on POSIX systems only; elsewhere the rename is all there is. */
  private static void flushFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      return;
    }
  }

  private static void clear(Path partial, Exception why) {
    try {
      delete(partial);
    } catch (IOException left) {
      why.addSuppressed(left);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<Path>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path at, IOException failed)
              throws IOException {
            Files.delete(at);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
