package dev.gantrywright.load;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Lists the drives that are mounted now. */
public interface Drives {
  /**
   * @throws IOException where the system's list cannot be read
   */
  List<Drive> now() throws IOException;

  /** This system's list. */
  static Drives ofSystem(String osName) {
    String os = osName.toLowerCase(Locale.ROOT);
    if (os.contains("linux")) {
      return new LinuxDrives(Path.of("/proc/self/mountinfo"), Path.of("/sys/dev/block"));
    }
    return os.contains("windows") ? Drives::windows : () -> volumes(Path.of("/Volumes"));
  }

  /** macOS mounts every drive but its own under one folder. */
  private static List<Drive> volumes(Path folder) throws IOException {
    List<Drive> out = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path root :
          all.filter(Files::isDirectory).filter(p -> !Files.isSymbolicLink(p)).toList()) {
        out.add(of(root, true));
      }
    }
    return out;
  }

  private static List<Drive> windows() {
    List<Drive> out = new ArrayList<>();
    for (Path root : FileSystems.getDefault().getRootDirectories()) {
      try {
        Object removable = Files.getFileStore(root).getAttribute("volume:isRemovable");
        out.add(of(root, Boolean.TRUE.equals(removable)));
      } catch (IOException | UnsupportedOperationException e) {
        // An empty card reader has a letter but no volume.
        continue;
      }
    }
    return out;
  }

  /** One drive, as Java's own view of its volume tells it. */
  static Drive of(Path root, boolean removable) throws IOException {
    FileStore store = Files.getFileStore(root);
    return new Drive(
        root,
        store.name(),
        store.type().toLowerCase(Locale.ROOT),
        removable,
        store.isReadOnly(),
        store.getTotalSpace(),
        store.getUsableSpace());
  }
}
