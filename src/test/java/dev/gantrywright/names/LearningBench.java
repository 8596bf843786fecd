package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Times learning a folder of 10,000 settings, warm. Run: {@code mvn -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=dev.gantrywright.names.LearningBench}.
 */
public final class LearningBench {
  private static final int FILES = 40;
  private static final int SETTINGS = 250;
  private static final int ROUNDS = 9;
  private static final int WARM_UP = 5;
  private static final String[] WORDS = {
    "SPEED", "LIMIT", "MOTOR", "TEMP", "MIN", "MAX", "HOME", "STEPS", "FAN", "PANEL", "BUFFER",
    "CURRENT", "PROBE", "FILTER", "HEATER", "BELT", "TIMEOUT", "SERIAL", "BOARD", "RAMP", "QUEUE",
    "PIN", "LEVEL", "GUARD", "OFFSET", "TABLE", "KICK", "PERIOD", "X", "Y", "Z", "E"
  };

  private LearningBench() {}

  /** A folder whose names are made of the trade's words, so that many pairs must be weighed. */
  static FirmwareFolder folder() {
    TreeMap<String, byte[]> files = new TreeMap<>();
    long seed = 20_260_101;
    for (int f = 0; f < FILES; f++) {
      StringBuilder text = new StringBuilder("// Part " + f + "\n");
      for (int i = 0; i < SETTINGS; i++) {
        StringBuilder name = new StringBuilder();
        for (int w = 0; w < 3; w++) {
          seed = seed * 6364136223846793005L + 1442695040888963407L;
          name.append(WORDS[(int) ((seed >>> 33) % WORDS.length)]).append('_');
        }
        String value =
            switch (i % 5) {
              case 0 -> "{ 80, 80, 400, 93 }";
              case 1 -> "true";
              case 2 -> String.valueOf(i * 7);
              case 3 -> "0." + i;
              default -> "MODE_" + i;
            };
        text.append("#define ").append(name).append(f).append('_').append(i);
        text.append(' ')
            .append(value)
            .append(" // ")
            .append(name.toString().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
            .append("in mm\n");
      }
      files.put("part" + f + ".h", text.toString().getBytes(StandardCharsets.UTF_8));
    }
    return FirmwareFolder.of(Path.of("bench"), files, Map.of());
  }

  public static void main(String[] args) {
    FirmwareFolder folder = folder();
    Learner learner = new Learner(McuNames.byShape());
    double[] millis = new double[ROUNDS];
    double[] busy = new double[ROUNDS];
    var threads = java.lang.management.ManagementFactory.getThreadMXBean();
    int fields = 0;
    for (int round = 0; round < WARM_UP + ROUNDS; round++) {
      long start = System.nanoTime();
      long cpu = threads.getCurrentThreadCpuTime();
      fields = learner.learn(folder).fields().size();
      if (round >= WARM_UP) {
        millis[round - WARM_UP] = (System.nanoTime() - start) / 1e6;
        busy[round - WARM_UP] = (threads.getCurrentThreadCpuTime() - cpu) / 1e6;
      }
    }
    Arrays.sort(millis);
    Arrays.sort(busy);
    System.out.printf(
        "%d settings, %d fields proposed: median %.0f ms (%.0f ms of processor), slowest %.0f ms of %d%n",
        folder.settings().size(),
        fields,
        millis[ROUNDS / 2],
        busy[ROUNDS / 2],
        millis[ROUNDS - 1],
        ROUNDS);
  }
}
