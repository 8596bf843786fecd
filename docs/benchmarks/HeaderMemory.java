import dev.gantrywright.header.FirmwareFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a folder that was read and evaluated keeps in memory, against the bytes read.
 *
 * <p>Run from the project's root: {@code java -cp target/classes docs/benchmarks/HeaderMemory.java
 * /usr/lib/avr/include/avr}
 */
class HeaderMemory {
  public static void main(String[] args) throws Exception {
    Map<String, byte[]> files = new TreeMap<>();
    long bytes = 0;
    try (Stream<Path> list = Files.list(Path.of(args[0]))) {
      for (Path file : list.filter(f -> f.getFileName().toString().startsWith("io")).toList()) {
        byte[] content = Files.readAllBytes(file);
        files.put(file.getFileName().toString(), content);
        bytes += content.length;
      }
    }
    memory(files, bytes);
  }

  private static void memory(Map<String, byte[]> files, long bytes) throws Exception {
    long before = used();
    FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), files, Map.of());
    long after = used();
    System.out.printf(
        "a folder of %.1f MB keeps %.1f MB besides them: %.2f times the bytes read with them (%d settings)%n",
        bytes / 1e6, (after - before) / 1e6, (after - before + bytes) / (double) bytes,
        folder.settings().size());
  }

  private static long used() throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      System.gc();
      Thread.sleep(100);
    }
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
