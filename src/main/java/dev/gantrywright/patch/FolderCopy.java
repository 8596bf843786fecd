package dev.gantrywright.patch;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayList;
import java.util.List;

/**
 * What a firmware folder holds, for copying it whole. Links are copied as links where they stay
 * inside the folder; what leads out, and what is no file, is left out and named.
 */
final class FolderCopy {
  private final Path source;
  private final List<Path> folders = new ArrayList<>();
  private final List<Path> files = new ArrayList<>();
  private final List<Path> links = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();

  private FolderCopy(Path source) {
    this.source = source;
  }

  /** Lists the folder without following any link. */
  static FolderCopy list(Path folder) throws IOException {
    FolderCopy copy = new FolderCopy(folder.toRealPath());
    Files.walkFileTree(copy.source, copy.new Visitor());
    return copy;
  }

  List<Path> files() {
    return files;
  }

  /** Links that lead out and things that are no files, relative, with the reason. */
  List<String> leftOut() {
    return leftOut;
  }

  /** Makes the folders and the links; files come one by one with {@link #copy}. */
  void skeleton(Path target) throws IOException {
    for (Path folder : folders) {
      Files.createDirectories(target.resolve(folder.toString()));
    }
    for (Path link : links) {
      Files.createSymbolicLink(
          target.resolve(link.toString()), Files.readSymbolicLink(source.resolve(link)));
    }
  }

  void copy(Path file, Path target) throws IOException {
    Files.copy(
        source.resolve(file),
        target.resolve(file.toString()),
        StandardCopyOption.COPY_ATTRIBUTES,
        LinkOption.NOFOLLOW_LINKS);
  }

  /** Gives a rewritten file the permissions of its original, where the system has such. */
  static void permissions(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView goal = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (view != null && goal != null) {
      goal.setPermissions(view.readAttributes().permissions());
    }
  }

  private final class Visitor extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      folders.add(source.relativize(folder));
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      Path relative = source.relativize(file);
      if (attributes.isSymbolicLink()) {
        Path goal = Files.readSymbolicLink(file);
        if (goal.isAbsolute() || !staysInside(file, goal)) {
          leftOut.add(named(relative) + ": a link that leads out of the folder");
        } else {
          links.add(relative);
        }
      } else if (attributes.isRegularFile()) {
        files.add(relative);
      } else {
        leftOut.add(named(relative) + ": not a file");
      }
      return FileVisitResult.CONTINUE;
    }

    private boolean staysInside(Path link, Path goal) throws IOException {
      Path plain = link.getParent().resolve(goal).normalize();
      return plain.startsWith(source)
          && (!Files.exists(plain) || plain.toRealPath().startsWith(source));
    }
  }

  /** A relative path with {@code /} on every system. */
  static String named(Path relative) {
    return relative.toString().replace(relative.getFileSystem().getSeparator(), "/");
  }
}
