package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a line proves of itself is what the whole file proves, or nothing. */
class NearProofTest {
  private static final String BEFORE = "// first\n#define A 1\n";
  private static final String AFTER = "#define Z 26 // last\n";

  /** The line that an edit leaves, from the line alone; null where that does not settle it. */
  private static String near(SourceFile file, int row, Edit edit) {
    return NearProof.line(file, List.of(edit), row, file.table().start(row));
  }

  /** The same from the whole file. */
  private static String far(SourceFile file, int row, Edit edit) {
    SourceFile then = SourceFile.of("a.h", FileEdits.spliced(file.bytes(), List.of(edit)));
    return EditProof.holds(file, then, List.of(edit), row, false)
        ? then.text(file.table().start(row), then.table().end(row))
        : null;
  }

  private static Edit edit(String text, String old, String replacement) {
    int at = text.lastIndexOf(old);
    return new Edit(new Span(at, at + old.length()), replacement.getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#define B 160  // steps        | 160  | 80",
        "#define B { 1, 2, 160 }        | 160  | 80.5",
        "#define B 160 /* a */ /* b */  | 160  | 80",
        "  #define B 160                | 160  | 80",
        "#define B(x) (x * 160)         | 160  | 80",
        "#define B \"160\"              | 160  | 80"
      })
  void aPlainEditIsProvenByItsLine(String line, String old, String replacement) {
    String text = BEFORE + line + "\n" + AFTER;
    SourceFile file = SourceFile.of("a.h", text.getBytes(StandardCharsets.UTF_8));
    String near = near(file, 1, edit(text, old, replacement));
    assertThat(near).isEqualTo(far(file, 1, edit(text, old, replacement))).isNotNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#define B 160  // steps | 160          | 80 /*",
        "#define B 160  // steps | // steps     | \\",
        "#define B 160  // steps | // steps     | /* steps",
        "#define B 160 /* a */   | a */         | a",
        "#define B 160           | B            | C",
        "#define B 160           | 160          | 80ß"
      })
  void whatReachesBeyondTheLineIsLeftToTheWholeFile(String line, String old, String replacement) {
    String text = BEFORE + line + "\n" + AFTER;
    SourceFile file = SourceFile.of("a.h", text.getBytes(StandardCharsets.UTF_8));
    int at = text.indexOf(line) + line.lastIndexOf(old);
    Edit edit =
        new Edit(new Span(at, at + old.length()), replacement.getBytes(StandardCharsets.UTF_8));
    assertThat(near(file, 1, edit)).isNull();
  }

  @Test
  void aCommentedOutDefinitionIsLeftToTheWholeFile() {
    String text = BEFORE + "//#define B 160\n" + AFTER;
    SourceFile file = SourceFile.of("a.h", text.getBytes(StandardCharsets.UTF_8));
    assertThat(near(file, 1, edit(text, "160", "80"))).isNull();
  }

  @Test
  void everyLineEndIsKept() {
    for (String end : new String[] {"\n", "\r\n", "\r", ""}) {
      String text = BEFORE + "#define B 160" + end;
      SourceFile file = SourceFile.of("a.h", text.getBytes(StandardCharsets.UTF_8));
      assertThat(near(file, 1, edit(text, "160", "80"))).isEqualTo("#define B 80");
    }
  }
}
