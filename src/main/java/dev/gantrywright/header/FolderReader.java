package dev.gantrywright.header;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;

/**
 * Finds and reads the files of a firmware folder: headers, the sources that include them, build
 * settings. A link that leads out of the folder is not followed.
 */
final class FolderReader {
  private static final int MOST_FILES = 50_000;
  private static final int MOST_DEEP = 64;
  private static final long LARGEST = 32L << 20;

  private final Path root;
  private final Path realRoot;
  private final List<Problem> problems = new ArrayList<>();
  private final TreeMap<String, Path> found = new TreeMap<>();
  private final Set<Path> entered = new HashSet<>();

  private FolderReader(Path root, Path realRoot) {
    this.root = root;
    this.realRoot = realRoot;
  }

  /** What was read: path relative to the folder, with {@code /}, and bytes. */
  record Contents(TreeMap<String, byte[]> files, List<Problem> problems) {}

  static Contents read(Path dir, Progress progress) throws FolderException {
    if (!Files.exists(dir)) {
      throw new FolderException(dir + ": there is no such folder; check the path");
    }
    if (!Files.isDirectory(dir)) {
      throw new FolderException(dir + ": this is a file; give the folder that holds the headers");
    }
    try {
      FolderReader reader = new FolderReader(dir, dir.toRealPath());
      reader.walk(dir, 0);
      return reader.load(progress);
    } catch (IOException e) {
      throw new FolderException(dir + ": cannot be read (" + Faults.reason(e) + ")", e);
    }
  }

  private void walk(Path dir, int depth) throws IOException {
    if (depth > MOST_DEEP || !entered.add(dir.toRealPath())) {
      return;
    }
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(dir)) {
      stream.forEach(entries::add);
    } catch (IOException e) {
      if (depth == 0) {
        throw e;
      }
      problem(dir, "cannot be listed (" + Faults.reason(e) + "); its headers are missing");
      return;
    }
    entries.sort(null);
    for (Path entry : entries) {
      visit(entry, depth);
    }
  }

  private void visit(Path entry, int depth) throws IOException {
    String name = entry.getFileName().toString();
    if (found.size() >= MOST_FILES || name.startsWith(".")) {
      return;
    }
    if (Files.isSymbolicLink(entry) && !inside(entry)) {
      if (kindOf(name) != FileKind.OTHER || Files.isDirectory(entry)) {
        problem(entry, "this link leads out of the folder; it is not followed");
      }
      return;
    }
    if (Files.isDirectory(entry)) {
      walk(entry, depth + 1);
    } else if (Files.isRegularFile(entry) && kindOf(name) != FileKind.OTHER) {
      found.put(relative(entry), entry);
    }
  }

  private boolean inside(Path link) {
    try {
      return link.toRealPath().startsWith(realRoot);
    } catch (IOException e) {
      return false;
    }
  }

  private Contents load(Progress progress) {
    TreeMap<String, byte[]> files = new TreeMap<>();
    int done = 0;
    for (var entry : found.entrySet()) {
      try {
        long size = Files.size(entry.getValue());
        if (size > LARGEST) {
          problem(entry.getValue(), "larger than 32 MiB; not read as a header");
        } else {
          files.put(entry.getKey(), Files.readAllBytes(entry.getValue()));
        }
      } catch (IOException e) {
        String text = "cannot be read (" + Faults.reason(e) + "); check its permissions";
        problem(entry.getValue(), text);
      }
      progress.read(++done, found.size(), entry.getKey());
    }
    return new Contents(files, List.copyOf(problems));
  }

  private String relative(Path path) {
    return root.relativize(path).toString().replace('\\', '/');
  }

  private void problem(Path path, String text) {
    problems.add(new Problem(relative(path), 0, 0, text));
  }

  /** What a file of the folder is to us. */
  enum FileKind {
    HEADER,
    SOURCE,
    BUILD_SETTINGS,
    OTHER
  }

  static FileKind kindOf(String path) {
    int dot = path.lastIndexOf('.');
    String end = dot < 0 ? "" : path.substring(dot + 1).toLowerCase(Locale.ROOT);
    return switch (end) {
      case "h", "hpp", "hh", "hxx", "h++" -> FileKind.HEADER;
      case "c", "cpp", "cc", "cxx", "c++", "ino" -> FileKind.SOURCE;
      case "ini", "cfg", "conf" -> FileKind.BUILD_SETTINGS;
      default -> FileKind.OTHER;
    };
  }
}
