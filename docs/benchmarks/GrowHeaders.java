import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IniDocument;
import dev.gantrywright.header.Setting;
import dev.gantrywright.header.UnifiedDiffReader;
import dev.gantrywright.header.Why;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * Texts and folders that a careless reader takes quadratic time over, or never ends, at three sizes:
 * read, evaluated, every setting with its comment and reason asked for. Processor time a byte; with
 * linear time the figures of a row are alike.
 *
 * <p>Run from the project's root: {@code java -cp target/classes docs/benchmarks/GrowHeaders.java
 * [PARTS OF ROWS' NAMES]}
 */
class GrowHeaders {
  private static final Map<String, IntFunction<Runnable>> ROWS = new LinkedHashMap<>();

  public static void main(String[] args) {
    conditions();
    macros();
    lines();
    otherFiles();
    System.out.println("processor time in ns a byte at 64 KiB, 256 KiB, 1 MiB, the best of three");
    ROWS.forEach(
        (name, row) -> {
          if (args.length == 0 || Arrays.stream(args).anyMatch(name::contains)) {
            show(name, row);
          }
        });
  }

  private static void conditions() {
    text("open conditions, each in the one before", "#if 1\n#define A 1\n");
    text(
        "conditions that nothing settles, each in the one before, a name in each",
        size -> numbered(size / 50, "#if X%d\n#define A%d 1\n") + "#endif\n".repeat(size / 50));
    text(
        "nested conditions, all closed",
        size -> "#if A\n".repeat(size / 13) + "#define B\n" + "#endif\n".repeat(size / 13));
    text("branches of one condition", size -> "#if 0\n" + "#elif A\n#define B 1\n".repeat(size / 20));
    text(
        "branches of one condition, a name in each",
        size -> "#if 0\n" + numbered(size / 32, "#elif X%d\n#define B%d 1\n"));
    text("branches that are not taken", size -> "#if 1\n" + "#elif A\n#define B 1\n".repeat(size / 20));
    text("#error under conditions in each other", size -> "#if 1\n".repeat(size / 12) + "#error\n".repeat(size / 12));
    text("parentheses in a condition", size -> "#if " + "(".repeat(size) + "\n#define A\n#endif\n");
    text("a condition of many names", size -> "#if " + numbered(size / 11, "X%d || ") + "0\n#define A\n#endif\n");
    text(
        "settings under one long condition",
        size -> "#if " + "1 + ".repeat(size / 8) + "1\n" + "#define A 1\n".repeat(size / 24));
    text(
        "settings under a condition on a long macro",
        size -> "#define L 1" + " + 1".repeat(size / 8) + "\n#if L\n" + "#define A 1\n".repeat(size / 24));
  }

  private static void macros() {
    text("conditions on a macro that doubles thirty times", size -> bomb() + "#if M30 > 1\n#endif\n".repeat(size / 19));
    text(
        "conditions on a macro that calls itself",
        size -> "#define F(x) x F(x) G(x)\n#define G(x) F(x) F(F(x))\n" + "#if F(F(F(1)))\n#endif\n".repeat(size / 22));
    text(
        "conditions on a chain of macros",
        size ->
            "#define M0 1\n"
                + numbered(1, size / 40, i -> "#define M" + i + " M" + (i - 1) + "\n")
                + ("#if M" + (size / 40 - 1) + "\n#endif\n").repeat(size / 80));
    text(
        "a macro of many parameters",
        size -> "#define F(p0" + numbered(1, size / 20, i -> ",p" + i) + ") p0" + numbered(1, size / 20, i -> "+p" + i)
            + "\n#if F(" + "1,".repeat(size / 20) + "1)\n#endif\n");
    text(
        "a long argument in many places",
        size -> "#define F(x) x" + "+x".repeat(size / 5) + "\n#if F(1" + "+1".repeat(size / 5) + ")\n#endif\n");
    text(
        "an argument of empty macros in many places",
        size -> "#define E\n#define F(x) x" + " x".repeat(size / 5) + "\n#if F(E" + " E".repeat(size / 5) + ")\n#endif\n");
    text("a name pasted together", size -> "#define P(a) a" + "##a".repeat(size / 3) + "\n#if P(b)\n#endif\n");
    text("one name defined again and again", "#define A 1 // note\n");
    text("one name defined again and again, asked for", size -> "#define A 1 // n\n".repeat(size / 17) + "#if B\n#endif\n");
    text(
        "names with one hash",
        size -> numbered(0, size / 42, i -> "#define " + collision(i) + " 1\n"));
  }

  private static void lines() {
    text("one name on spliced lines", size -> "#define A" + "\\\nb".repeat(size / 3) + " 1\n");
    text("splices alone", size -> "#define A 1" + "\\\n".repeat(size / 2));
    text("splices inside a name", size -> "#define A" + "\\\n".repeat(size / 2) + "B 1\n");
    text("openings of comments that never close", "/* ");
    text("lines that open a comment or a string", "#define A \"x /* \n");
    text("openings of raw strings", "R\"x(\n");
    text("commented-out definitions without an end", "/* #define A ");
    text("commented-out definitions on one line", size -> "/*#define A 1*/ ".repeat(size / 16) + "x\n");
    text("braces, each in the one before", size -> "#define L " + "{1,".repeat(size / 3) + "\n");
    text("a list of many elements", size -> "#define L { 1" + ", 1".repeat(size / 3) + " }\n");
    text("a comment block above a comment block", "// A = 1, B = 2, between 1 and 2 mm\n");
    text(
        "settings far below a comment",
        size -> "// note\n" + "\n".repeat(size / 2) + "#define A 1\n".repeat(size / 24));
    text("wide gaps in comments", size -> ("// == values a" + " ".repeat(3_900) + "b ==\n\n#define A 1\n").repeat(size / 3_930));
    text("long lists in comments", size -> ("#define A 1 // one of a" + ", a".repeat(1_300) + "\n").repeat(size / 3_923));
    text("no line end at all", "#define A ");
  }

  private static void otherFiles() {
    ROWS.put(
        "one header included again and again",
        size ->
            () ->
                all(
                    Map.of(
                        "x.h", bytes("#include \"y.h\"\n".repeat(size / 30)),
                        "y.h", bytes("#if 1" + "+1".repeat(size / 4) + "\n#define B 1\n#endif\n"))));
    ROWS.put("headers that each ask for a name of the next", size -> () -> all(chain(size / 64, 1)));
    ROWS.put("headers that each ask for a name that no other has", size -> () -> all(chain(size / 64, 1 << 24)));
    ROWS.put("keys of build settings", size -> ini("[a]\n" + numbered(size / 14, "key%d = 1\n")));
    ROWS.put("one key of many lines", size -> ini("[a]\nkey =\n" + "  -D X=1\n".repeat(size / 9)));
    ROWS.put("headings of build settings", size -> ini("[a]\nb = 1\n".repeat(size / 10)));
    ROWS.put("a diff of many lines", GrowHeaders::diff);
  }

  private static Map<String, byte[]> chain(int files, int step) {
    Map<String, byte[]> out = new HashMap<>();
    for (int i = 0; i < files; i++) {
      String text = "#ifdef NAME_%d\n#define OTHER_%d 1\n#endif\n#define NAME_%d 1\n";
      out.put(String.format("h%06d.h", i), bytes(String.format(text, i + step, i, i)));
    }
    return out;
  }

  private static Runnable ini(String text) {
    byte[] bytes = bytes(text);
    return () -> {
      IniDocument document = IniDocument.of("a.ini", bytes);
      document.entries().forEach(entry -> document.entry(entry.section(), entry.key()));
      document.sections();
    };
  }

  private static Runnable diff(int size) {
    int lines = size / 24;
    StringBuilder old = new StringBuilder();
    StringBuilder diff = new StringBuilder("--- a/x.h\n+++ b/x.h\n");
    for (int i = 1; i <= lines; i++) {
      old.append("#define A\n");
      diff.append("@@ -").append(i).append(" +").append(i).append(" @@\n-#define A\n+#define B\n");
    }
    FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), Map.of("x.h", bytes(old.toString())), Map.of());
    return () -> {
      EditPlan plan = UnifiedDiffReader.read(folder, bytes(diff.toString()));
      if (plan.inverse().files().size() != 1) {
        throw new IllegalStateException("the diff was not taken");
      }
    };
  }

  private static void text(String name, String piece) {
    text(name, size -> piece.repeat(size / piece.length()));
  }

  private static void text(String name, IntFunction<String> text) {
    ROWS.put(
        name,
        size -> {
          byte[] bytes = bytes(text.apply(size));
          return () -> all(Map.of("x.h", bytes));
        });
  }

  /** What a person can ask of a folder: settings with comments and reasons, problems, an account. */
  private static void all(Map<String, byte[]> files) {
    FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), files, Map.of());
    Setting last = null;
    for (Setting setting : folder.settings()) {
      last = setting;
    }
    if (last != null) {
      Why.of(folder, last).words();
      folder.named(last.name());
    }
    folder.problems();
  }

  private static String bomb() {
    return "#define M0 1 +\n"
        + numbered(1, 31, i -> "#define M" + i + " M" + (i - 1) + " M" + (i - 1) + "\n");
  }

  private static String numbered(int count, String piece) {
    return numbered(0, count, i -> piece.replace("%d", Integer.toString(i)));
  }

  private static String numbered(int from, int to, IntFunction<String> piece) {
    StringBuilder out = new StringBuilder();
    for (int i = from; i < to; i++) {
      out.append(piece.apply(i));
    }
    return out.toString();
  }

  /** Sixteen pairs of letters of one hash each. */
  private static String collision(int number) {
    StringBuilder out = new StringBuilder();
    for (int bit = 0; bit < 16; bit++) {
      out.append((number >> bit & 1) == 0 ? "Aa" : "BB");
    }
    return out.toString();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void show(String name, IntFunction<Runnable> row) {
    System.out.flush();
    StringBuilder line = new StringBuilder();
    for (int size = 1 << 16; size <= 1 << 20; size *= 4) {
      double best = Double.MAX_VALUE;
      for (int round = 0; round < 3 && (round == 0 || best * size < 3e9); round++) {
        Runnable run = row.apply(size);
        long start = cpu();
        run.run();
        best = Math.min(best, (cpu() - start) / (double) size);
      }
      line.append(String.format("%9.1f", best));
    }
    System.out.println(line + "  " + name);
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
