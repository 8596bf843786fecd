import dev.gantrywright.header.Change;
import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;

/**
 * Reads and edits random headers: no exception, no hang, bytes kept, inverse restores, time linear.
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
    linear("random pieces", size -> header(random, size / 6));
    nasty().forEach(FuzzHeaders::linear);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static IntFunction<byte[]> repeated(String piece) {
    return size -> bytes(piece.repeat(size / piece.length()));
  }

  /** Texts that a careless reader takes quadratic time over, or never ends. */
  private static Map<String, IntFunction<byte[]>> nasty() {
    Map<String, IntFunction<byte[]>> kinds = new LinkedHashMap<>();
    kinds.put("open conditions, each in the one before", repeated("#if 1\n#define A 1\n"));
    kinds.put(
        "nested conditions, all closed",
        size -> bytes("#if A\n".repeat(size / 13) + "#define B\n" + "#endif\n".repeat(size / 13)));
    kinds.put("branches of one condition", size -> bytes("#if 0\n" + "#elif A\n#define B 1\n".repeat(size / 20)));
    kinds.put("one name on spliced lines", size -> bytes("#define A" + "\\\nb".repeat(size / 3) + " 1\n"));
    kinds.put("splices alone", size -> bytes("#define A 1" + "\\\n".repeat(size / 2)));
    kinds.put("openings of comments that never close", repeated("/* "));
    kinds.put("lines that open a comment or a string", repeated("#define A \"x /* \n"));
    kinds.put("openings of raw strings", repeated("R\"x(\n"));
    kinds.put("commented-out definitions without an end", repeated("/* #define A "));
    kinds.put("braces, each in the one before", size -> bytes("#define L " + "{1,".repeat(size / 3) + "\n"));
    kinds.put("parentheses in a condition", size -> bytes("#if " + "(".repeat(size) + "\n#define A\n#endif\n"));
    kinds.put("one name defined again and again", repeated("#define A 1 // note\n"));
    kinds.put("a comment block above a comment block", repeated("// A = 1, B = 2, between 1 and 2 mm\n"));
    kinds.put("no line end at all", repeated("#define A "));
    kinds.put(
        "conditions on a macro that doubles thirty times",
        size -> bytes(bomb() + "#if M30 > 1\n#endif\n".repeat(size / 19)));
    kinds.put(
        "conditions on a macro that calls itself",
        size ->
            bytes("#define F(x) x F(x) G(x)\n#define G(x) F(x) F(F(x))\n" + "#if F(F(F(1)))\n#endif\n".repeat(size / 22)));
    return kinds;
  }

  private static String bomb() {
    StringBuilder text = new StringBuilder("#define M0 1 +\n");
    for (int i = 1; i <= 30; i++) {
      text.append("#define M").append(i).append(" M").append(i - 1).append(" M").append(i - 1).append("\n");
    }
    return text.toString();
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

  /** Best of three for each size; with linear time the figures of a row are alike. */
  private static void linear(String kind, IntFunction<byte[]> text) {
    StringBuilder row = new StringBuilder();
    for (int size = 1 << 16; size <= 1 << 20; size *= 4) {
      double best = Double.MAX_VALUE;
      for (int round = 0; round < 3; round++) {
        byte[] x = text.apply(size);
        long start = cpu();
        FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), Map.of("x.h", x), Map.of());
        folder.settings().forEach(Setting::comment);
        folder.problems();
        best = Math.min(best, (cpu() - start) / (double) x.length);
      }
      row.append(String.format("%9.1f", best));
    }
    System.out.printf("%s  ns a byte at 64 KiB, 256 KiB, 1 MiB: %s%n", row, kind);
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
