import dev.gantrywright.header.Change;
import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Reads and edits random headers: no exception, no hang, bytes kept, inverse restores.
 *
 * <p>Run from the project's root: {@code java -cp target/classes docs/benchmarks/FuzzHeaders.java COUNT
 * SEED}
 */
class FuzzHeaders {
  private static final String[] PIECES = {
    "#", "define ", "#define A 1", "//#define B 2", "/* #define C 3 */", "#if A", "#ifdef B",
    "#ifndef D\n#define D\n", "#elif 1", "#else", "#endif", "\n", "\n", "\n", "\r\n", "\r", "\\\n",
    "\\ \r\n", "/*", "*/", "//", "\"", "'", "R\"(", ")\"", "%:", " ", "\t", "{ 1, 2 }", "(x)", "##",
    "defined", "\u00b5", "\uFEFF", "#include \"x.h\"", "#include \"y.h\"", "#undef A", "0x1F",
    "\\u00e4", "#pragma once", "#error no", "?", ":", ",", "#define F(a, ...) a ## __VA_ARGS__ #a",
    "#if F(1, 2) == 12", "#if A && (B || !C)", "[1, 2, 3]", "range 1..5", "// ==== Wings ====", "$"
  };

  public static void main(String[] args) {
    int count = Integer.parseInt(args[0]);
    Random random = new Random(Long.parseLong(args[1]));
    long settings = 0;
    long edits = 0;
    long bytes = 0;
    long slowest = 0;
    for (int i = 0; i < count; i++) {
      byte[] x = header(random, 1 + random.nextInt(120));
      byte[] y = header(random, 1 + random.nextInt(20));
      bytes += x.length + y.length;
      try {
        long start = cpu();
        FirmwareFolder folder =
            FirmwareFolder.of(Path.of("f"), Map.of("x.h", x, "y.h", y), Map.of());
        List<Setting> all = List.copyOf(folder.settings());
        settings += all.size();
        slowest = Math.max(slowest, cpu() - start);
        if (!all.isEmpty()) {
          edits += edit(folder, all.get(random.nextInt(all.size())), x, y);
        }
      } catch (RuntimeException e) {
        String input = Arrays.toString(x) + " and " + Arrays.toString(y);
        throw new IllegalStateException("folder " + i + " failed: " + input, e);
      }
    }
    System.out.printf(
        "%d folders, %.1f MB, %d settings, %d edits proven; slowest folder %.1f ms of processor%n",
        count, bytes / 1e6, settings, edits, slowest / 1e6);
  }

  private static int edit(FirmwareFolder folder, Setting setting, byte[] x, byte[] y) {
    EditPlan plan =
        EditPlan.of(folder, List.of(new Change.SetValue(setting.name(), "{ 7 }", "fuzz")));
    EditPlan back = plan.inverse();
    if (!Arrays.equals(back.result("x.h"), x) || !Arrays.equals(back.result("y.h"), y)) {
      throw new IllegalStateException("the inverse does not restore " + Arrays.toString(x));
    }
    return plan.files().isEmpty() ? 0 : 1;
  }

  private static byte[] header(Random random, int pieces) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < pieces; i++) {
      if (random.nextInt(12) == 0) {
        out.write(random.nextInt(256));
      } else {
        out.writeBytes(PIECES[random.nextInt(PIECES.length)].getBytes(StandardCharsets.UTF_8));
      }
    }
    return out.toByteArray();
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
