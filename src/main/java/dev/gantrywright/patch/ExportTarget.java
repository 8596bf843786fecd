package dev.gantrywright.patch;

import dev.gantrywright.patch.ExportException.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Judges whether a patched folder may be written at a place. */
final class ExportTarget {
  private ExportTarget() {}

  /**
   * The real place to write to: its parent folder made if need be, links in the way resolved.
   *
   * @param replace whether the user said that a non-empty folder may be replaced
   */
  static Path checked(Path source, Path target, boolean replace) throws ExportException {
    Path absolute = target.toAbsolutePath().normalize();
    try {
      Path from = source.toRealPath();
      if (Files.isSymbolicLink(absolute)) {
        throw refused(target, "is a link; give the folder itself");
      }
      Path parent = absolute.getParent();
      if (parent == null) {
        throw refused(target, "is the root of the file system; give a folder of its own");
      }
      Path existing = nearestExisting(parent);
      Path place = existing.toRealPath().resolve(existing.relativize(absolute)).normalize();
      if (place.startsWith(from)) {
        throw refused(target, "lies inside the firmware folder, which is never written to");
      }
      if (from.startsWith(place)) {
        throw refused(target, "holds the firmware folder; choose a folder beside it");
      }
      if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
        occupied(target, place, replace);
      }
      Files.createDirectories(place.getParent());
      return place;
    } catch (IOException failed) {
      throw new ExportException(Kind.FAILED, IoLine.of(target, failed), failed);
    }
  }

  private static void occupied(Path target, Path place, boolean replace)
      throws IOException, ExportException {
    if (!Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
      throw refused(target, "is a file; give a new folder");
    }
    try (Stream<Path> inside = Files.list(place)) {
      if (!replace && inside.findAny().isPresent()) {
        throw refused(target, "is a folder that is not empty; give a new one or say to replace it");
      }
    }
  }

  private static Path nearestExisting(Path start) {
    Path at = start;
    while (at.getParent() != null && !Files.exists(at)) {
      at = at.getParent();
    }
    return at;
  }

  private static ExportException refused(Path target, String why) {
    return new ExportException(Kind.REFUSED, target + ": " + why);
  }
}
