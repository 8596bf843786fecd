package dev.gantrywright.header;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Finds included headers as a compiler does: beside the including file for the quoted form, then in
 * the folders given, in their order (C17 6.10.2).
 */
final class SearchPath implements IncludeResolver {
  private static final long LARGEST = 64L << 20;

  private final List<Path> folders;
  private final Map<String, Optional<SourceFile>> files = new ConcurrentHashMap<>();

  /** What the angled form of a header found: the same wherever it stands. */
  private final Map<String, Optional<SourceFile>> angledFound = new ConcurrentHashMap<>();

  SearchPath(List<Path> folders) {
    this.folders = List.copyOf(folders);
  }

  @Override
  public SourceFile find(String header, boolean angled, SourceFile from, boolean next) {
    if (angled && !next) {
      Optional<SourceFile> known = angledFound.get(header);
      if (known == null) {
        known = Optional.ofNullable(search(header, true, from, false));
        angledFound.put(header, known);
      }
      return known.orElse(null);
    }
    return search(header, angled, from, next);
  }

  private SourceFile search(String header, boolean angled, SourceFile from, boolean next) {
    Path name;
    try {
      name = Path.of(header);
    } catch (InvalidPathException e) {
      return null;
    }
    Path fromFile = Path.of(from.path());
    if (name.isAbsolute()) {
      return open(name);
    }
    if (!angled && !next) {
      SourceFile beside = open(fromFile.resolveSibling(name));
      if (beside != null) {
        return beside;
      }
    }
    int first = next ? behind(fromFile) : 0;
    for (Path folder : folders.subList(first, folders.size())) {
      SourceFile found = open(folder.resolve(name));
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** The index behind the folder that holds the file; 0 if none of them does. */
  private int behind(Path file) {
    for (int i = 0; i < folders.size(); i++) {
      if (file.startsWith(folders.get(i))) {
        return i + 1;
      }
    }
    return 0;
  }

  /** The file, read once, or null. Two names of one file give one file. */
  private SourceFile open(Path path) {
    String key = path.toString();
    Optional<SourceFile> known = files.get(key);
    if (known == null) {
      Optional<SourceFile> read = read(path);
      known = files.putIfAbsent(key, read);
      known = known == null ? read : known; // another thread may have been first
    }
    return known.orElse(null);
  }

  private Optional<SourceFile> read(Path path) {
    try {
      if (!Files.isRegularFile(path) || Files.size(path) > LARGEST) {
        return Optional.empty();
      }
      return Optional.of(SourceFile.of(path.toString(), FileBytes.read(path)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
