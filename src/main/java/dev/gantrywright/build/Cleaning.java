package dev.gantrywright.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What a clean step would delete: the files that a build has written since a folder was exported. A
 * step of its own, shown before it is done; links are never followed.
 *
 * @param folder the folder that is cleaned
 * @param files relative to the folder, in order
 * @param bytes what they take together
 */
public record Cleaning(Path folder, List<Path> files, long bytes) {
  public Cleaning {
    files = List.copyOf(files);
  }

  /**
   * Finds what lies under the folder and is not one of the files that belong there.
   *
   * @param kept files of the folder itself, relative to it: the export's own list
   * @throws IOException where the folder cannot be read
   */
  public static Cleaning plan(Path folder, List<Path> kept) throws IOException {
    TreeSet<Path> keep = new TreeSet<>();
    kept.forEach(p -> keep.add(p.normalize()));
    List<Path> files = new ArrayList<>();
    long[] bytes = new long[1];
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            Path relative = folder.relativize(file);
            if (!keep.contains(relative)) {
              files.add(relative);
              bytes[0] += attributes.isRegularFile() ? attributes.size() : 0;
            }
            return FileVisitResult.CONTINUE;
          }
        });
    files.sort(null);
    return new Cleaning(folder, files, bytes[0]);
  }

  /** In one line: what goes. */
  public String shown() {
    return files.isEmpty()
        ? "nothing to clean in " + folder
        : String.format(
            java.util.Locale.ROOT,
            "deletes %d files, %,d bytes, in %s: %s%s",
            files.size(),
            bytes,
            folder,
            String.join(", ", files.stream().limit(5).map(Path::toString).toList()),
            files.size() > 5 ? ", …" : "");
  }

  /**
   * Deletes what the plan names, and folders that this leaves empty.
   *
   * @return files deleted
   * @throws IOException where a file cannot be deleted
   */
  public int run() throws IOException {
    int deleted = 0;
    TreeSet<Path> parents = new TreeSet<>();
    for (Path file : files) {
      Path whole = folder.resolve(file).normalize();
      if (!whole.startsWith(folder.normalize()) || file.isAbsolute()) {
        throw new IOException(file + " leads out of " + folder + "; nothing further was deleted");
      }
      deleted += Files.deleteIfExists(whole) ? 1 : 0;
      for (Path p = file.getParent(); p != null; p = p.getParent()) {
        parents.add(p);
      }
    }
    for (Path parent : parents.descendingSet()) {
      removeIfEmpty(folder.resolve(parent));
    }
    return deleted;
  }

  private static void removeIfEmpty(Path dir) throws IOException {
    try (var entries = Files.list(dir)) {
      if (entries.findAny().isPresent()) {
        return;
      }
    } catch (java.nio.file.NoSuchFileException | UncheckedIOException e) {
      return;
    }
    Files.delete(dir);
  }
}
