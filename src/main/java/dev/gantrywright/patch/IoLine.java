package dev.gantrywright.patch;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/** What a failed file operation means, in one line: what, where, what to do. */
final class IoLine {
  private IoLine() {}

  /** The folder itself, or the one beside it that it is put together in. */
  private static boolean made(Path target, Path where) {
    Path whole = target.toAbsolutePath();
    Path at = where.toAbsolutePath();
    return at.startsWith(whole)
        || (whole.getParent() != null
            && whole.getParent().equals(at.getParent())
            && at.getFileName().toString().startsWith("." + whole.getFileName()));
  }

  static String of(Path target, IOException failed) {
    String where =
        failed instanceof FileSystemException at && at.getFile() != null
            ? at.getFile()
            : target.toString();
    if (failed instanceof AccessDeniedException) {
      return target + ": may not be written (" + where + "); choose another place";
    }
    if (failed instanceof NoSuchFileException) {
      return made(target, Path.of(where))
          ? target + ": cannot be made there; choose another place"
          : where + ": is not there any more; read the folder again";
    }
    String reason =
        failed instanceof FileSystemException at && at.getReason() != null
            ? at.getReason()
            : String.valueOf(failed.getMessage());
    String lower = reason.toLowerCase(Locale.ROOT);
    if (lower.contains("no space") || lower.contains("quota")) {
      return target + ": the disk is full; free some space or choose another place";
    }
    if (lower.contains("read-only")) {
      return target + ": the file system is read-only; choose another place";
    }
    return target + ": cannot be written (" + reason + "); choose another place";
  }
}
