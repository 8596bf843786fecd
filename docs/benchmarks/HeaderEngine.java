import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.HeaderDocument;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * In-process figures of the header engine, warm: reading rate, re-evaluation after one edit, memory.
 *
 * <p>Run from the project's root: {@code java -cp target/classes docs/benchmarks/HeaderEngine.java
 * /usr/lib/avr/include/avr}
 */
class HeaderEngine {
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
    rate(files, bytes);
    reevaluation();
    memory(files, bytes);
  }

  /** Reading is scanning plus evaluation of each file for itself. */
  private static void rate(Map<String, byte[]> files, long bytes) {
    double[] rates = new double[15];
    int settings = 0;
    for (int round = 0; round < rates.length; round++) {
      long start = cpu();
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        settings += HeaderDocument.of(file.getKey(), file.getValue()).settings().size();
      }
      rates[round] = bytes * 1e3 / (cpu() - start);
    }
    double[] warm = Arrays.copyOfRange(rates, 5, rates.length);
    Arrays.sort(warm);
    System.out.printf(
        "read %d files, %.1f MB, on one thread: median %.0f MB/s, best %.0f (%d settings)%n",
        files.size(), bytes / 1e6, warm[warm.length / 2], warm[warm.length - 1],
        settings / rates.length);
  }

  private static void reevaluation() {
    Map<String, byte[]> files = new TreeMap<>();
    StringBuilder main = new StringBuilder();
    for (int f = 0; f < 20; f++) {
      StringBuilder text = new StringBuilder("#pragma once\n");
      for (int i = 0; i < 500; i++) {
        if (i % 10 == 0) {
          text.append("#if N").append(f).append('_').append(Math.max(0, i - 5)).append(" > 3\n");
        }
        text.append("#define N").append(f).append('_').append(i).append("   ").append(i);
        text.append("  // note on setting ").append(i).append('\n');
        if (i % 10 == 9) {
          text.append("#endif\n");
        }
      }
      files.put("part" + f + ".h", text.toString().getBytes(StandardCharsets.UTF_8));
      main.append("#include \"part").append(f).append(".h\"\n");
    }
    files.put("main.c", main.toString().getBytes(StandardCharsets.UTF_8));
    FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), files, Map.of());
    List<Double> millis = new ArrayList<>();
    String text = new String(files.get("part7.h"), StandardCharsets.UTF_8);
    for (int i = 0; i < 600; i++) {
      byte[] edited = text.replace("N7_3   3 ", "N7_3   " + i + " ").getBytes(StandardCharsets.UTF_8);
      long start = cpu();
      folder = folder.with("part7.h", edited);
      millis.add((cpu() - start) / 1e6);
    }
    List<Double> warm = millis.subList(300, 600).stream().sorted().toList();
    System.out.printf(
        "re-evaluate %d settings after one edit: median %.2f ms, 95th percentile %.2f ms%n",
        folder.settings().size(), warm.get(150), warm.get(285));
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

  /** Time of this thread on a processor: other programs on the machine do not count. */
  private static long cpu() {
    return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
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
