package dev.gantrywright.machine;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;

/** Writes a file whole or not at all, and keeps the version before beside it. */
final class AtomicSave {
  private AtomicSave() {}

  static void write(Path file, byte[] bytes) throws IOException {
    Path target = Files.isSymbolicLink(file) ? file.toRealPath() : file.toAbsolutePath();
    Path folder = target.getParent();
    Path fresh = Files.createTempFile(folder, "." + target.getFileName() + ".", ".new");
    try {
      try (FileChannel out = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
          out.write(buffer);
        }
        out.force(true);
      }
      copyRights(target, fresh);
      if (Files.exists(target)) {
        Path previous = target.resolveSibling(target.getFileName() + ".previous");
        Files.copy(target, previous, StandardCopyOption.REPLACE_EXISTING);
      }
      move(fresh, target);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  /** A temporary file is private; the saved one must be as open as the one it replaces. */
  private static void copyRights(Path target, Path fresh) throws IOException {
    if (!Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
      return;
    }
    Files.setPosixFilePermissions(
        fresh,
        Files.exists(target)
            ? Files.getPosixFilePermissions(target)
            : PosixFilePermissions.fromString("rw-r--r--"));
  }

  private static void move(Path fresh, Path target) throws IOException {
    try {
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
