package dev.gantrywright.header;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Where the C compiler of a Unix-like machine looks for headers after the folders it is given. */
public final class SystemFolders {
  private SystemFolders() {}

  /**
   * The folders that exist, in the compiler's order.
   *
   * @param root the root of the file system
   * @param architecture as Java names it ({@code os.arch})
   */
  public static List<Path> of(Path root, String architecture) {
    String triplet =
        switch (architecture) {
          case "amd64", "x86_64" -> "x86_64-linux-gnu";
          case "aarch64" -> "aarch64-linux-gnu";
          case "arm" -> "arm-linux-gnueabihf";
          case "riscv64" -> "riscv64-linux-gnu";
          default -> architecture + "-linux-gnu";
        };
    List<Path> out = new ArrayList<>();
    Path compiler = newest(root.resolve("usr/lib/gcc").resolve(triplet));
    if (compiler != null) {
      addFolder(out, compiler.resolve("include"));
    }
    addFolder(out, root.resolve("usr/local/include"));
    addFolder(out, root.resolve("usr/include").resolve(triplet));
    addFolder(out, root.resolve("usr/include"));
    return List.copyOf(out);
  }

  private static void addFolder(List<Path> out, Path folder) {
    if (Files.isDirectory(folder)) {
      out.add(folder);
    }
  }

  private static Path newest(Path versions) {
    Path best = null;
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(versions)) {
      for (Path entry : entries) {
        if (best == null || version(entry) > version(best)) {
          best = entry;
        }
      }
    } catch (IOException e) {
      return null; // no such compiler here
    }
    return best;
  }

  private static int version(Path folder) {
    String name = folder.getFileName().toString();
    int dot = name.indexOf('.');
    String major = dot < 0 ? name : name.substring(0, dot);
    try {
      return Integer.parseInt(major);
    } catch (NumberFormatException e) {
      return -1;
    }
  }
}
