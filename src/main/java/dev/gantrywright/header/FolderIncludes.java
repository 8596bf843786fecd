package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds included headers inside a firmware folder: beside the including file, then at the root,
 * then the one file whose path ends so. Build systems set further search folders that the folder
 * itself does not show; an ending that fits one file alone stands for them.
 */
final class FolderIncludes implements IncludeResolver {
  private final Map<String, SourceFile> byPath;
  private final Map<String, List<SourceFile>> byName = new HashMap<>();

  FolderIncludes(Map<String, SourceFile> byPath) {
    this.byPath = byPath;
    byPath.forEach(
        (path, file) -> byName.computeIfAbsent(lastName(path), k -> new ArrayList<>()).add(file));
  }

  @Override
  public SourceFile find(String header, boolean angled, SourceFile from, boolean next) {
    String wanted = header.replace('\\', '/');
    if (!angled && !next) {
      String beside = normal(parent(from.path()) + wanted);
      SourceFile found = beside == null ? null : byPath.get(beside);
      if (found != null) {
        return found;
      }
    }
    String atRoot = normal(wanted);
    if (atRoot == null) {
      return null;
    }
    SourceFile root = byPath.get(atRoot);
    if (root != null && !next) {
      return root;
    }
    SourceFile only = null;
    for (SourceFile file : byName.getOrDefault(lastName(atRoot), Collections.emptyList())) {
      if (file.path().endsWith("/" + atRoot) && file != from) {
        if (only != null) {
          return null;
        }
        only = file;
      }
    }
    return only;
  }

  private static String parent(String path) {
    return path.substring(0, path.lastIndexOf('/') + 1);
  }

  private static String lastName(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** The path without {@code .} and {@code ..}, or null if it leaves the folder. */
  private static String normal(String path) {
    if (!path.contains("./") && !path.contains("//") && !path.startsWith("/")) {
      return path;
    }
    List<String> out = new ArrayList<>();
    for (String part : path.split("/")) {
      if (part.equals("..")) {
        if (out.isEmpty()) {
          return null;
        }
        out.remove(out.size() - 1);
      } else if (!part.isEmpty() && !part.equals(".")) {
        out.add(part);
      }
    }
    return String.join("/", out);
  }
}
