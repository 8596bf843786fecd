package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class UnifiedDiffReaderTest {
  private static FirmwareFolder folder(String text) {
    return FirmwareFolder.of(Path.of("rookery"), Map.of("src/perch.h", bytes(text)), Map.of());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String patched(String before, String diff) {
    EditPlan plan = UnifiedDiffReader.read(folder(before), bytes(diff));
    assertThat(plan.inverse().result("src/perch.h")).isEqualTo(bytes(before));
    return new String(plan.result("src/perch.h"), StandardCharsets.UTF_8);
  }

  private static final String HEAD = "--- a/src/perch.h\n+++ b/src/perch.h\n";

  @Test
  void changesAddsAndDeletes() {
    assertThat(patched("a\nb\nc\nd\n", HEAD + "@@ -1,4 +1,4 @@\n a\n-b\n+B\n c\n-d\n+e\n"))
        .isEqualTo("a\nB\nc\ne\n");
    assertThat(patched("a\nb\n", HEAD + "@@ -1,2 +1,3 @@\n a\n+x\n b\n")).isEqualTo("a\nx\nb\n");
    assertThat(patched("a\nb\n", HEAD + "@@ -1,2 +1 @@\n a\n-b\n")).isEqualTo("a\n");
    assertThat(patched("", HEAD + "@@ -0,0 +1 @@\n+a\n")).isEqualTo("a\n");
  }

  @Test
  void keepsLineEndsAndAMissingLastOne() {
    assertThat(patched("a\r\nb\r\n", HEAD + "@@ -1,2 +1,2 @@\n a\r\n-b\r\n+c\r\n"))
        .isEqualTo("a\r\nc\r\n");
    String noEnd = "\\ No newline at end of file\n";
    assertThat(patched("a", HEAD + "@@ -1 +1 @@\n-a\n" + noEnd + "+b\n" + noEnd)).isEqualTo("b");
    assertThat(patched("a", HEAD + "@@ -1 +1 @@\n-a\n" + noEnd + "+b\n")).isEqualTo("b\n");
  }

  @Test
  void severalHunks() {
    String before = "1\n2\n3\n4\n5\n6\n";
    String diff = HEAD + "@@ -1,2 +1,2 @@\n-1\n+one\n 2\n@@ -5,2 +5,2 @@\n 5\n-6\n+six\n";
    assertThat(patched(before, diff)).isEqualTo("one\n2\n3\n4\n5\nsix\n");
  }

  @Test
  void refusesWhatDoesNotFit() {
    assertThatThrownBy(() -> patched("x\n", HEAD + "@@ -1 +1 @@\n-a\n+b\n"))
        .hasMessageContaining("line 1 is not what the diff expects");
    assertThatThrownBy(() -> patched("x\n", "nonsense")).hasMessageContaining("no unified diff");
    assertThatThrownBy(() -> patched("a\n", HEAD + "@@ -1 +1 @@\n-a\n"))
        .hasMessageContaining("breaks off");
    assertThatThrownBy(() -> patched("a\n", "--- a/x.h\n+++ b/x.h\n@@ -1 +1 @@\n-a\n+b\n"))
        .hasMessageContaining("x.h");
    assertThatThrownBy(() -> patched("a\n", HEAD + "@@ what @@\n-a\n+b\n"))
        .hasMessageContaining("no hunk");
  }

  @Test
  void refusesLinesThatTheFileDoesNotHave() {
    for (String range :
        new String[] {"-9,0 +9", "-9 +9", "-0 +1", "-1000000000,0 +1", "--4,0 +1"}) {
      assertThatThrownBy(() -> patched("a\n", HEAD + "@@ " + range + " @@\n+b\n"))
          .as(range)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("src/perch.h: ");
    }
    assertThatThrownBy(() -> patched("a\n", HEAD + "@@ -9,0 +9 @@\n+b\n"))
        .hasMessageContaining("the file has no line 9 as the diff says");
    assertThatThrownBy(() -> patched("a\n", HEAD + "@@ -1 +1 @@\nxa\n-a\n+b\n"))
        .hasMessageContaining("\"xa\" is no line of a hunk");
  }

  /** Mail and editors take the blank of an empty line away; the usual tools take it so too. */
  @Test
  void anEmptyLineOfContextMayHaveLostItsBlank() {
    assertThat(patched("a\n\nb\n", HEAD + "@@ -1,3 +1,3 @@\n a\n\n-b\n+c\n")).isEqualTo("a\n\nc\n");
    assertThat(patched("a\r\n\r\nb\r\n", HEAD + "@@ -1,3 +1,3 @@\n a\r\n\r\n-b\r\n+c\r\n"))
        .isEqualTo("a\r\n\r\nc\r\n");
  }

  /** No file is opened by what a diff calls it: it is looked up among those that were read. */
  @Test
  void aPathThatClimbsReachesNothing() {
    for (String path : new String[] {"../perch.h", "src/../src/perch.h", "/etc/hostname"}) {
      String diff = "--- a/" + path + "\n+++ b/" + path + "\n@@ -1 +1 @@\n-a\n+b\n";
      assertThatThrownBy(() -> UnifiedDiffReader.read(folder("a\n"), bytes(diff)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(path);
    }
  }
}
