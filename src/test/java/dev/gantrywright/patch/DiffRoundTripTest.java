package dev.gantrywright.patch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import dev.gantrywright.header.Change;
import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Outcome;
import dev.gantrywright.header.UnifiedDiffReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A plan written as a unified diff and read back is the same plan; its inverse undoes it. */
class DiffRoundTripTest {
  @TempDir private Path dir;

  private static FirmwareFolder folder(byte[] bytes) {
    return FirmwareFolder.of(Path.of("rookery"), Map.of("x.h", bytes), Map.of());
  }

  private static byte[] latin1(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.of(
            "#define A 1\n", "b", "\n", "\r\n", "\n\n", "c\r\n", "\u00ff", "-x\n", "@")
        .list()
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  @Property(tries = 500)
  void anyDiffReadsBack(@ForAll("texts") String before, @ForAll("texts") String after) {
    byte[] diff = UnifiedDiff.of("x.h", latin1(before), latin1(after));
    if (diff.length == 0) {
      return;
    }
    EditPlan plan = UnifiedDiffReader.read(folder(latin1(before)), diff);
    assertThat(plan.result("x.h")).isEqualTo(latin1(after));
    assertThat(plan.inverse().result("x.h")).isEqualTo(latin1(before));
  }

  /** The line ends of a header, and a last line that has none. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r\n without a last end", "\n without a last end"})
  void settingsEditedGoThroughBothProgramsAndBack(String form) throws IOException {
    Tool.need("git", "patch");
    String text =
        "#define FIRST 1 // one\n".concat("// between\n".repeat(12))
            + "//#define SECOND 2\n#define LIST { 1, 2 }\n#define LAST \"a\"";
    byte[] before = latin1(text.replace("\n", form.startsWith("\r") ? "\r\n" : "\n"));
    if (!form.endsWith("last end")) {
      before = latin1(new String(before, StandardCharsets.ISO_8859_1) + form);
    }
    EditPlan plan =
        EditPlan.of(
            folder(before),
            List.of(
                new Change.SetValue("FIRST", "100", "test"),
                new Change.SwitchOn("SECOND", "test"),
                new Change.SetElement("LIST", List.of(1), "22", "test"),
                new Change.SetValue("LAST", "\"b\"", "test")));
    assertThat(plan.outcomes()).allMatch(o -> o instanceof Outcome.Applied);
    byte[] after = plan.result("x.h");
    byte[] diff = UnifiedDiff.of("x.h", before, after);
    assertThat(UnifiedDiffReader.read(folder(before), diff).result("x.h")).isEqualTo(after);
    Path patch = Files.write(dir.resolve("x.patch"), diff);
    for (String program : List.of("git", "patch")) {
      Path root = Files.createDirectory(dir.resolve(program));
      Files.write(root.resolve("x.h"), before);
      if (program.equals("git")) {
        Tool.mustRun(root, "git", "apply", "--whitespace=nowarn", patch.toString());
      } else {
        Tool.mustRun(root, "patch", "--binary", "-p1", "-i", patch.toString());
      }
      assertThat(Files.readAllBytes(root.resolve("x.h"))).as(program).isEqualTo(after);
    }
    byte[] back = UnifiedDiff.of("x.h", after, plan.inverse().result("x.h"));
    assertThat(UnifiedDiffReader.read(folder(after), back).result("x.h")).isEqualTo(before);
  }
}
