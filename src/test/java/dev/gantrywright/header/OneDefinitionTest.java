package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A file of which one definition reads otherwise is the file that reading it anew gives. */
class OneDefinitionTest {
  private static final String[] LINES = {
    "#define A 1",
    "#define A 1 // mm",
    "  #  define B { 1, 2, 3 } /* each */",
    "#define C \"text // no comment\"",
    "#define D(x) (x * 2)",
    "#define E",
    "#define F 1 \\\n  + 2",
    "#define G R\"(1)\"",
    "#define \u00e4rger 3",
    "#define H 4 /* runs on\n over */",
    "//#define J 5",
    "/* #define K 6 */",
    "#if A",
    "#ifdef B",
    "#elif 2",
    "#else",
    "#endif",
    "#undef A",
    "#include \"a.h\"",
    "// === Heading ===",
    "// plain",
    "/* open",
    "*/",
    "\u00b5",
    "",
    "int x = 1;",
    "_Pragma(\"once\")",
    "#endif // too many",
  };

  private static final String[] TEXTS = {
    "2", "42", "", " ", "A", "{ 1 }", "\"s\"", "//", "/*", "*/", "\\", "\n", "\r", "\0", "\u00df",
    "(", "'", "R\"(", "define", "\u00c3", "\u009f"
  };

  private static SourceFile read(String text) {
    return read(text, StandardCharsets.UTF_8);
  }

  private static SourceFile read(String text, Charset charset) {
    return SourceFile.of("a.h", text.getBytes(charset));
  }

  private static Charset either(Random chance) {
    return chance.nextBoolean() ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
  }

  /** All that is worked out when it is first asked for. */
  private static void ask(SourceFile file) {
    file.lines();
    file.names();
    file.charset();
    file.binary();
    file.layout().settingRows();
    file.layout().parents();
    file.layout().branchesBefore();
    file.layout().sections();
  }

  private static List<String> rows(SourceFile file) {
    DirectiveTable table = file.table();
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < table.size(); i++) {
      boolean unusual = table.has(i, DirectiveTable.UNUSUAL_NAME);
      boolean function = table.has(i, DirectiveTable.FUNCTION_LIKE);
      boolean block = table.has(i, DirectiveTable.IN_BLOCK_COMMENT);
      boolean plain = table.has(i, DirectiveTable.PLAIN);
      rows.add(
          (table.kind(i) + " " + table.start(i) + " " + table.nameStart(i) + " " + table.nameEnd(i))
              + (" " + table.end(i) + " " + table.hash(i) + " " + file.name(i))
              + (" " + unusual + function + block + plain));
    }
    return rows;
  }

  private static List<String> comments(SourceFile file) {
    CommentBlocks comments = file.layout().comments();
    List<String> out = new ArrayList<>();
    for (int i = 0; i < comments.count(); i++) {
      Span block = comments.block(i);
      out.add(block + " under " + file.layout().sections().at(block.start()));
    }
    return out;
  }

  private static void same(SourceFile now, SourceFile fresh) {
    String text = new String(fresh.bytes(), StandardCharsets.UTF_8);
    assertThat(now.bytes()).isEqualTo(fresh.bytes());
    assertThat(rows(now)).as(text).isEqualTo(rows(fresh));
    assertThat(now.problems()).as(text).isEqualTo(fresh.problems());
    assertThat(now.charset()).as(text).isEqualTo(fresh.charset());
    assertThat(now.binary()).as(text).isEqualTo(fresh.binary());
    assertThat(now.sha256()).isEqualTo(fresh.sha256());
    assertThat(now.lines().count()).as(text).isEqualTo(fresh.lines().count());
    for (int line = 1; line <= fresh.lines().count(); line++) {
      assertThat(now.line(line)).as(text).isEqualTo(fresh.line(line));
    }
    for (int row = 0; row < fresh.table().size(); row++) {
      assertThat(now.names().rows(fresh.name(row))).isEqualTo(fresh.names().rows(fresh.name(row)));
    }
    assertThat(now.layout().settingRows()).as(text).isEqualTo(fresh.layout().settingRows());
    assertThat(now.layout().parents()).as(text).isEqualTo(fresh.layout().parents());
    assertThat(now.layout().branchesBefore()).as(text).isEqualTo(fresh.layout().branchesBefore());
    assertThat(comments(now)).as(text).isEqualTo(comments(fresh));
  }

  private static byte[] spliced(byte[] bytes, int from, int to, byte[] text) {
    return FileEdits.spliced(bytes, List.of(new Edit(new Span(from, to), text)));
  }

  /** Most of what is replaced stands in a definition, as an edit does; the rest anywhere. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void anyReplacementAnywhere(long seed) {
    Random chance = new Random(seed);
    int known = 0;
    for (int i = 0; i < 4_000; i++) {
      StringBuilder text = new StringBuilder();
      String end = List.of("\n", "\r\n", "\r").get(chance.nextInt(3));
      for (int line = 0; line < 1 + chance.nextInt(9); line++) {
        text.append(LINES[chance.nextInt(LINES.length)].replace("\n", end)).append(end);
      }
      SourceFile before = read(text.toString(), either(chance));
      if (chance.nextBoolean()) {
        ask(before);
      }
      int from = chance.nextInt(before.bytes().length + 1);
      int to = Math.min(before.bytes().length, from + chance.nextInt(4));
      byte[] put = TEXTS[chance.nextInt(TEXTS.length)].getBytes(either(chance));
      byte[] now = spliced(before.bytes(), from, to, put);
      known += OneDefinition.between(before, now) == null ? 0 : 1;
      same(before.with(now), SourceFile.of("a.h", now));
    }
    assertThat(known).as("replacements that needed no new reading").isGreaterThan(200);
  }

  @Test
  void editAfterEdit() {
    Random chance = new Random(5);
    StringBuilder text = new StringBuilder("// === First ===\n");
    for (int i = 0; i < 40; i++) {
      text.append("#define N").append(i).append("   ").append(i).append("  // mm\n");
      text.append(i % 9 == 0 ? "// === Part " + i + " ===\n" : "");
    }
    SourceFile file = read(text.toString());
    for (int i = 0; i < 300; i++) {
      if (i % 3 == 0) {
        ask(file);
      }
      int row = chance.nextInt(file.table().size());
      int at = file.table().nameEnd(row) + 2;
      byte[] put = Integer.toString(chance.nextInt(1 << chance.nextInt(20))).getBytes();
      byte[] now = spliced(file.bytes(), at, file.table().end(row) - 5, put);
      boolean differs = !Arrays.equals(now, file.bytes());
      assertThat(OneDefinition.between(file, now) != null).isEqualTo(differs);
      file = file.with(now);
      same(file, SourceFile.of("a.h", now));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#define B 160 | #define C 160",
        "#define B 160 | #define B(160",
        "#define B 160 | //#define B 160",
        "#define B 160 | #define B 160 /*",
        "#define B 160 | #define B 160\\",
        "#undef B // 1 | #undef B // 2",
        "//#define B 1 | //#define B 2"
      })
  void whatReachesBeyondTheLineIsReadAnew(String old, String now) {
    String rest = "\n#define Z 26 // last\n";
    byte[] then = ("// first\n" + now + rest).getBytes(StandardCharsets.UTF_8);
    assertThat(OneDefinition.between(read("// first\n" + old + rest), then)).isNull();
  }

  @Test
  void twoDefinitionsAreReadAnew() {
    byte[] now = "#define A 2\n#define B 2\n".getBytes(StandardCharsets.UTF_8);
    assertThat(OneDefinition.between(read("#define A 1\n#define B 1\n"), now)).isNull();
  }

  @Test
  void theSameBytesAreTheSameFile() {
    SourceFile file = read("#define A 1\n");
    assertThat(file.with(file.bytes().clone())).isSameAs(file);
  }

  @Test
  void bytesThatComeTogetherMayTellAnotherEncoding() {
    String text = "#define A \"\u00c3-\u009f\"\n";
    SourceFile before = read(text, StandardCharsets.ISO_8859_1);
    ask(before);
    byte[] joined = text.replace("-", "").getBytes(StandardCharsets.ISO_8859_1);
    assertThat(OneDefinition.between(before, joined)).isNotNull();
    same(before.with(joined), SourceFile.of("a.h", joined));
  }
}
