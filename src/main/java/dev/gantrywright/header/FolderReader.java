package dev.gantrywright.header;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
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
  private static final int MOST_ENTRIES = 500_000;
  private static final int MOST_DEEP = 64;
  private static final long MOST_BYTES = 512L << 20;
  private static final long LARGEST = 32L << 20;

  private final Path root;
  private final Path realRoot;
  private final List<Problem> problems = new ArrayList<>();
  private final TreeMap<String, Path> found = new TreeMap<>();
  private final Set<Path> entered = new HashSet<>();
  private final Limits limits;
  private final Progress progress;
  private int seen;

  /**
   * Where reading ends with one line instead of a part of the folder: a plan made from a part could
   * be wrong.
   *
   * @param files headers, sources and build settings
   * @param entries anything that the folder lists, at any depth
   * @param bytes of all files together
   */
  record Limits(int files, int entries, long bytes) {
    static final Limits SHIPPED = new Limits(MOST_FILES, MOST_ENTRIES, MOST_BYTES);
  }

  private FolderReader(Path root, Path realRoot, Progress progress, Limits limits) {
    this.progress = progress;
    this.limits = limits;
    this.root = root;
    this.realRoot = realRoot;
  }

  /** What was read: path relative to the folder, with {@code /}, and bytes. */
  record Contents(TreeMap<String, byte[]> files, List<Problem> problems) {}

  static Contents read(Path dir, Progress progress) throws FolderException {
    return read(dir, progress, Limits.SHIPPED);
  }

  static Contents read(Path dir, Progress progress, Limits limits) throws FolderException {
    if (!Files.exists(dir)) {
      throw new FolderException(dir + ": there is no such folder; check the path");
    }
    if (!Files.isDirectory(dir)) {
      throw new FolderException(dir + ": this is a file; give the folder that holds the headers");
    }
    try {
      FolderReader reader = new FolderReader(dir, dir.toRealPath(), progress, limits);
      reader.walk(dir, 0);
      return reader.load();
    } catch (IOException e) {
      throw new FolderException(dir + ": cannot be read (" + IoReason.of(e) + ")", e);
    }
  }

  private void walk(Path dir, int depth) throws IOException, FolderException {
    if (!entered.add(dir.toRealPath())) {
      return;
    }
    if (depth > MOST_DEEP) {
      problem(dir, "lies more than 64 folders deep; its headers are missing");
      return;
    }
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(dir)) {
      for (Path entry : stream) {
        if (++seen > limits.entries()) {
          throw tooMuch(String.format(Locale.ROOT, "%,d entries", limits.entries()));
        }
        progress.listed(seen);
        entries.add(entry);
      }
    } catch (IOException | DirectoryIteratorException failed) {
      IOException e =
          failed instanceof DirectoryIteratorException d ? d.getCause() : (IOException) failed;
      if (depth == 0) {
        throw e;
      }
      problem(dir, "cannot be listed (" + IoReason.of(e) + "); its headers are missing");
      return;
    }
    entries.sort(null);
    for (Path entry : entries) {
      visit(entry, depth);
    }
  }

  private FolderException tooMuch(String what) {
    return new FolderException(
        root + ": holds more than " + what + "; give the firmware's own folder, not one above it");
  }

  private void visit(Path entry, int depth) throws IOException, FolderException {
    progress.listed(seen);
    String name = entry.getFileName().toString();
    if (name.startsWith(".")) {
      return;
    }
    if (Files.isSymbolicLink(entry) && !Files.exists(entry)) {
      if (kindOf(name) != FileKind.OTHER) {
        problem(entry, "this link leads nowhere; the file is missing");
      }
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
      if (found.size() >= limits.files()) {
        throw tooMuch(String.format(Locale.ROOT, "%,d headers and sources", limits.files()));
      }
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

  private Contents load() throws FolderException {
    TreeMap<String, byte[]> files = new TreeMap<>();
    long bytes = 0;
    int done = 0;
    for (var entry : found.entrySet()) {
      try {
        long size = Files.size(entry.getValue());
        if (size > LARGEST) {
          problem(entry.getValue(), "larger than 32 MiB; not read as a header");
        } else {
          byte[] read = Files.readAllBytes(entry.getValue());
          bytes += read.length;
          if (bytes > limits.bytes()) {
            throw tooMuch((limits.bytes() >> 20) + " MiB of headers and sources");
          }
          files.put(entry.getKey(), read);
        }
      } catch (IOException e) {
        String text = "cannot be read (" + IoReason.of(e) + "); check its permissions";
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
