package dev.gantrywright.patch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.FirmwareFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills exports with SIGKILL at random moments: at the patched folder's place there is a whole
 * folder or none. {@code -Dexport.kills=200} runs the full count.
 */
class KilledExportTest {
  private static final int KILLS = Integer.getInteger("export.kills", 4);
  private static final Path FIRMWARE = Path.of("demo-profiles/rookery-2.3").toAbsolutePath();

  @TempDir Path folder;

  @Test
  void neverAHalfFolderAtItsPlace() throws Exception {
    List<Map<String, byte[]>> whole = List.of(exported(0), exported(1));
    Path place = folder.resolve("patched");
    Random random = new Random(7);
    int there = 0;
    for (int i = 0; i < KILLS; i++) {
      Process process = start(place);
      long before = System.nanoTime();
      long nanos = 0;
      for (int n = 1 + random.nextInt(3); n > 0; n--) {
        assertThat(process.getInputStream().read()).isEqualTo('.');
        nanos = System.nanoTime() - before;
        before = System.nanoTime();
      }
      TimeUnit.NANOSECONDS.sleep((long) (2 * nanos * random.nextDouble()));
      process.destroyForcibly().waitFor();
      if (Files.exists(place)) {
        Map<String, byte[]> found = files(place);
        assertThat(whole.stream().anyMatch(w -> same(w, found)))
            .as("after kill %d the folder with %s is whole", i, found.keySet())
            .isTrue();
        there++;
      }
    }
    System.out.println(KILLS + " kills: " + there + " times a whole folder, never half of one");
  }

  private Map<String, byte[]> exported(int turn) throws Exception {
    Path place = folder.resolve("whole" + turn);
    PatchPlan plan = PatchPlan.of(ExportInALoop.changes(turn), FirmwareFolder.read(FIRMWARE));
    Export.write(plan, place, false, ExportProgress.none(), () -> false);
    return files(place);
  }

  private static Map<String, byte[]> files(Path place) throws IOException {
    Map<String, byte[]> out = new TreeMap<>();
    try (Stream<Path> all = Files.walk(place)) {
      for (Path f : all.filter(Files::isRegularFile).toList()) {
        out.put(place.relativize(f).toString(), Files.readAllBytes(f));
      }
    }
    return out;
  }

  private static boolean same(Map<String, byte[]> a, Map<String, byte[]> b) {
    return a.keySet().equals(b.keySet())
        && a.keySet().stream().allMatch(k -> Arrays.equals(a.get(k), b.get(k)));
  }

  private static Process start(Path place) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            ExportInALoop.class.getName(),
            FIRMWARE.toString(),
            place.toString())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
