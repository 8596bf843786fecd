package dev.gantrywright.patch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class UnifiedDiffTest {
  @TempDir Path dir;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  static Stream<Arguments> pairs() {
    String many = "";
    for (int i = 1; i <= 40; i++) {
      many += "#define LINE_" + i + " " + i + "\n";
    }
    String two = many.replace("LINE_3 3", "LINE_3 33").replace("LINE_30 30", "LINE_30 300");
    String near = many.replace("LINE_3 3", "LINE_3 33").replace("LINE_10 10", "LINE_10 100");
    return Stream.of(
        Arguments.of("plain", "a\nb\nc\n", "a\nB\nc\n"),
        Arguments.of("carriage returns", "a\r\nb\r\nc\r\n", "a\r\nB\r\nc\r\n"),
        Arguments.of("mixed ends", "a\r\nb\nc\r\nd\n", "a\r\nb\nC\r\nd\n"),
        Arguments.of("no last newline, changed line before", "a\nb\nc", "a\nB\nc"),
        Arguments.of("no last newline, last line changed", "a\nb\nc", "a\nb\nC"),
        Arguments.of("last newline added", "a\nb", "a\nb\n"),
        Arguments.of("last newline taken away", "a\nb\n", "a\nb"),
        Arguments.of("byte order mark", "\u00ef\u00bb\u00bfa\nb\n", "\u00ef\u00bb\u00bfa\nB\n"),
        Arguments.of("bytes of no encoding", "a\u00ff\n\u0080\n", "a\u00ff\n\u0081\n"),
        Arguments.of("lone carriage returns", "a\rb\rc\n", "a\rB\rc\n"),
        Arguments.of("lines added at the end", "a\n", "a\nb\nc\n"),
        Arguments.of("lines added at the start", "a\n", "x\ny\na\n"),
        Arguments.of("lines taken away", "a\nb\nc\nd\n", "a\nd\n"),
        Arguments.of("from empty", "", "a\nb\n"),
        Arguments.of("two hunks", many, two),
        Arguments.of("changes that share a hunk", many, near),
        Arguments.of("lines like diff marks", "--- a\n+++ b\n@@\n", "--- a\n+++ c\n@@\n"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pairs")
  void bothProgramsTakeIt(String name, String before, String after) throws IOException {
    Tool.need("git", "patch");
    for (String path : List.of("x.h", "a folder/b c.h", "f\u00fc\"\\r.h")) {
      applies(path, bytes(before), bytes(after));
    }
  }

  private void applies(String path, byte[] before, byte[] after) throws IOException {
    byte[] diff = UnifiedDiff.of(path, before, after);
    for (String program : List.of("git", "patch")) {
      Path root = Files.createTempDirectory(dir, program);
      Path file = root.resolve(path);
      Files.createDirectories(file.getParent());
      Files.write(file, before);
      Path patch = Files.write(dir.resolve("x.patch"), diff);
      if (program.equals("git")) {
        Tool.mustRun(root, "git", "apply", "--whitespace=nowarn", patch.toString());
      } else {
        Tool.mustRun(root, "patch", "--binary", "-p1", "-i", patch.toString());
        assertThat(root.resolve(path + ".orig")).doesNotExist();
      }
      assertThat(Files.readAllBytes(file)).as(program + " " + path).isEqualTo(after);
    }
  }

  @Test
  void patchTakesCarriageReturnsWithoutBeingTold() throws IOException {
    Tool.need("patch");
    Path file = Files.write(dir.resolve("x.h"), bytes("a\r\nb\r\n"));
    Path patch =
        Files.write(
            dir.resolve("x.patch"),
            UnifiedDiff.of("x.h", bytes("a\r\nb\r\n"), bytes("a\r\nB\r\n")));
    Tool.mustRun(dir, "patch", "-p1", "-i", patch.toString());
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes("a\r\nB\r\n"));
  }

  @Test
  void gitCountsTheLinesOfSeveralFilesAnew() throws IOException {
    Tool.need("git");
    Map<String, byte[]> before = new TreeMap<>();
    Map<String, byte[]> after = new TreeMap<>();
    for (String path : List.of("a b.h", "c.h", "f\u00fc\".h")) {
      before.put(path, bytes("a\r\nb\nc"));
      after.put(path, bytes("a\r\nB\nc"));
      Files.write(dir.resolve(path), before.get(path));
    }
    Path patch = Files.write(dir.resolve("x.patch"), UnifiedDiff.of(before, after));
    Tool.mustRun(dir, "git", "apply", "--recount", "--whitespace=nowarn", patch.toString());
    for (String path : after.keySet()) {
      assertThat(Files.readAllBytes(dir.resolve(path))).as(path).isEqualTo(after.get(path));
    }
  }

  @Test
  void equalFilesGiveNothing() {
    assertThat(UnifiedDiff.of("x.h", bytes("a\n"), bytes("a\n"))).isEmpty();
  }

  @Test
  void standsAsWritten() {
    byte[] diff = UnifiedDiff.of("c/x.h", bytes("a\nb\nc\nd\ne\n"), bytes("a\nb\nc\nd\nE"));
    assertThat(new String(diff, StandardCharsets.ISO_8859_1))
        .isEqualTo(
            "diff -u a/c/x.h b/c/x.h\n--- a/c/x.h\n+++ b/c/x.h\n@@ -2,4 +2,4 @@\n b\n c\n d\n-e\n+E\n"
                + "\\ No newline at end of file\n");
  }

  @Property(tries = 300)
  void appliedByHandItGivesTheSecond(
      @ForAll("texts") String before, @ForAll("texts") String after) {
    byte[] diff = UnifiedDiff.of("x", bytes(before), bytes(after));
    assertThat(applied(before, new String(diff, StandardCharsets.ISO_8859_1))).isEqualTo(after);
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.of("a", "b", "\n", "\r\n", "\n\n", "c\n", "\u00ff", "-x\n", "\\\n")
        .list()
        .ofMaxSize(30)
        .map(parts -> String.join("", parts));
  }

  /** A small reader of unified diffs, independent of the writer. */
  private static String applied(String before, String diff) {
    List<String> old = new ArrayList<>(List.of(before.split("(?<=\n)")));
    if (before.isEmpty()) {
      old.clear();
    }
    StringBuilder out = new StringBuilder();
    int at = 0;
    String[] lines = diff.split("(?<=\n)");
    for (int i = 3; i < lines.length; i++) {
      String line = lines[i];
      boolean bare = i + 1 < lines.length && lines[i + 1].startsWith("\\ No newline");
      String body = line.substring(1);
      String text = bare ? body.substring(0, body.length() - 1) : body;
      if (line.startsWith("@@ -")) {
        String[] range = line.split(" ")[1].substring(1).split(",");
        int start = Integer.parseInt(range[0]);
        int count = range.length > 1 ? Integer.parseInt(range[1]) : 1;
        int from = count == 0 ? start : start - 1;
        while (at < from) {
          out.append(old.get(at++));
        }
      } else if (line.startsWith(" ")) {
        assertThat(old.get(at++)).isEqualTo(text);
        out.append(text);
      } else if (line.startsWith("-")) {
        assertThat(old.get(at++)).isEqualTo(text);
      } else if (line.startsWith("+")) {
        out.append(text);
      }
    }
    while (at < old.size()) {
      out.append(old.get(at++));
    }
    return out.toString();
  }
}
