package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The laws that reading and editing keep on any input. */
class EditLawsTest {
  private static FirmwareFolder folder(byte[] bytes) {
    return FirmwareFolder.of(Path.of("f"), Map.of("x.h", bytes), Map.of());
  }

  /** Pieces that make every state of the reader likely. */
  private static final String[] PIECES = {
    "#",
    "define ",
    "#define A 1",
    "//#define B 2",
    "/* #define C 3 */",
    "#if A",
    "#ifdef B",
    "#elif 1",
    "#else",
    "#endif",
    "\n",
    "\r\n",
    "\r",
    "\\\n",
    "\\ \r\n",
    "/*",
    "*/",
    "//",
    "\"",
    "'",
    "R\"(",
    ")\"",
    "%:",
    " ",
    "\t",
    "{ 1, 2 }",
    "(x)",
    "##",
    "defined",
    "\u00b5",
    "\uFEFF",
    "#include \"x.h\"",
    "#undef A",
    "0x1F",
    "\\u00e4",
    "#pragma once",
    "#error no",
    "?",
    ":",
    ","
  };

  @Provide
  Arbitrary<byte[]> nasty() {
    Arbitrary<byte[]> pieces =
        Arbitraries.of(PIECES)
            .list()
            .ofMaxSize(60)
            .map(list -> String.join("", list).getBytes(StandardCharsets.UTF_8));
    Arbitrary<byte[]> any = Arbitraries.bytes().array(byte[].class).ofMaxSize(200);
    return Arbitraries.oneOf(pieces, any);
  }

  /** Headers of plain settings, with the line end as a parameter. */
  @Provide
  Arbitrary<String> headers() {
    Arbitrary<String> line =
        Combinators.combine(
                Arbitraries.of("#define ", "  #  define\t", "#define /* c */ "),
                Arbitraries.of(" 1", "  { 1, 2,3 }", " \"s // t\"", "", " 0x10 \\\n + 2"),
                Arbitraries.of("", "   // note", " /* note */", "\t// x"))
            .as((head, value, tail) -> head + "@" + value + tail);
    return Combinators.combine(line.list().ofMinSize(1).ofMaxSize(12), Arbitraries.of("\n", "\r\n"))
        .as(
            (lines, eol) -> {
              StringBuilder out = new StringBuilder();
              for (int i = 0; i < lines.size(); i++) {
                out.append(lines.get(i).replace("@", "NAME" + i)).append('\n');
              }
              return out.toString().replace("\n", eol);
            });
  }

  @Property(tries = 2_000)
  void readingIsLosslessAndNeverFails(@ForAll("nasty") byte[] bytes) {
    FirmwareFolder folder = folder(bytes);
    HeaderDocument document = folder.headers().iterator().next();
    assertThat(document.bytes()).isEqualTo(bytes);
    for (Setting s : document.settings()) {
      assertThat(s.lineSpan().end()).isLessThanOrEqualTo(bytes.length);
      assertThat(s.valueSpan().start()).isGreaterThanOrEqualTo(s.nameSpan().end());
      assertThat(s.lineSpan().contains(s.nameSpan().start())).isTrue();
    }
    assertThat(folder.problems()).allSatisfy(p -> assertThat(p.toString()).doesNotContain("\n"));
  }

  @Property(tries = 1_000)
  void anEditChangesOnlyItsRangeAndTheInverseRestores(@ForAll("nasty") byte[] bytes) {
    FirmwareFolder folder = folder(bytes);
    for (Setting s : folder.settings()) {
      EditPlan plan = EditPlan.of(folder, List.of(new Change.SetValue(s.name(), "(4 + 2)", "law")));
      if (plan.files().isEmpty()) {
        continue;
      }
      byte[] after = plan.result("x.h");
      FileEdits edits = plan.files().get("x.h");
      Span first = edits.edits().get(0).span();
      Span last = edits.edits().get(edits.edits().size() - 1).span();
      assertThat(Arrays.copyOf(after, first.start()))
          .isEqualTo(Arrays.copyOf(bytes, first.start()));
      int tail = bytes.length - last.end();
      assertThat(Arrays.copyOfRange(after, after.length - tail, after.length))
          .isEqualTo(Arrays.copyOfRange(bytes, last.end(), bytes.length));
      assertThat(plan.inverse().result("x.h")).isEqualTo(bytes);
      assertThat(plan.after().named(s.name()))
          .anyMatch(now -> now.on() && now.value().equals("(4 + 2)"));
    }
  }

  @Property(tries = 500)
  void setThenReadGivesTheValue(@ForAll("headers") String text, @ForAll("values") String value) {
    FirmwareFolder folder = folder(text.getBytes(StandardCharsets.UTF_8));
    EditPlan plan = EditPlan.of(folder, List.of(new Change.SetValue("NAME0", value, "law")));
    assertThat(plan.after().live("NAME0").orElseThrow().value()).isEqualTo(value);
    List<Setting> before = folder.settings();
    List<Setting> after = plan.after().settings();
    assertThat(after).hasSameSizeAs(before);
    for (int i = 1; i < before.size(); i++) {
      assertThat(after.get(i).value()).isEqualTo(before.get(i).value());
      assertThat(after.get(i).comment()).isEqualTo(before.get(i).comment());
    }
  }

  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        "1", "-2.5", "TRUE", "\"a b\"", "{ 1, { 2, 3 } }", "(1 << 4)", "'x'", "A ## B", "");
  }

  @Property(tries = 200)
  void theOrderOfIndependentEditsDoesNotMatter(@ForAll("headers") String text, @ForAll long seed) {
    FirmwareFolder folder = folder(text.getBytes(StandardCharsets.UTF_8));
    List<Change> changes = new ArrayList<>();
    for (Setting s : folder.settings()) {
      changes.add(new Change.SetValue(s.name(), "9" + changes.size(), "law"));
    }
    byte[] straight = EditPlan.of(folder, changes).result("x.h");
    Collections.shuffle(changes, new Random(seed));
    assertThat(EditPlan.of(folder, changes).result("x.h")).isEqualTo(straight);
  }

  @Property(tries = 300)
  void offThenOnIsIdentity(@ForAll("headers") String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    FirmwareFolder folder = folder(bytes);
    EditPlan off = EditPlan.of(folder, List.of(new Change.SwitchOff("NAME0", "law")));
    assertThat(off.outcomes().get(0)).isInstanceOf(Outcome.Applied.class);
    assertThat(off.after().live("NAME0")).isEmpty();
    EditPlan on = EditPlan.of(off.after(), List.of(new Change.SwitchOn("NAME0", "law")));
    assertThat(on.result("x.h")).isEqualTo(bytes);
  }

  @Property(tries = 500)
  void aBuildSettingsFileIsReadWithoutLossAndSet(@ForAll("nasty") byte[] bytes) {
    byte[] text =
        ("[a]\nk = v\n" + new String(bytes, StandardCharsets.ISO_8859_1))
            .replace("\0", "")
            .getBytes(StandardCharsets.ISO_8859_1);
    IniDocument ini = IniDocument.of("b.ini", text);
    assertThat(ini.bytes()).isEqualTo(text);
    FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), Map.of("b.ini", text), Map.of());
    EditPlan plan = EditPlan.of(folder, List.of(new Change.SetKey("a", "k", "w", "law")));
    if (!plan.files().isEmpty()) {
      IniDocument after = plan.after().buildSettings().get(0);
      assertThat(after.entry("a", "k").orElseThrow().value()).isEqualTo("w");
      assertThat(after.entries()).hasSameSizeAs(ini.entries());
      assertThat(plan.inverse().result("b.ini")).isEqualTo(text);
    }
  }
}
