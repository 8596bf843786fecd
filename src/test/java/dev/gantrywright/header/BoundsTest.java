package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a header holds, reading ends, and what was too much is one clear line. */
class BoundsTest {
  private static FirmwareFolder folder(String... pathsAndTexts) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return FirmwareFolder.of(Path.of("rookery"), files, Map.of());
  }

  @Test
  void aLineOfMillionsOfBytes() {
    String value = "{ 1" + ", 2".repeat(1_000_000) + " }";
    FirmwareFolder folder = folder("a.h", "#define A " + value + " // end\n#define B 1\n");
    Setting a = folder.named("A").get(0);
    assertThat(a.elements()).hasSize(1_000_001);
    assertThat(a.value()).isEqualTo(value);
    Change last = new Change.SetElement("A", List.of(1_000_000), "7", "");
    EditPlan plan = EditPlan.of(folder, List.of(last));
    assertThat(plan.after().named("A").get(0).value()).endsWith(", 2, 7 }");
    assertThat(folder.problems()).isEmpty();
  }

  @Test
  void aLineOfAHundredThousandSplices() {
    FirmwareFolder folder =
        folder("a.h", "#define A 1" + "\\\n".repeat(100_000) + "2\n#define B\n");
    assertThat(folder.named("A").get(0).value()).isEqualTo("12");
    assertThat(folder.named("B").get(0).line()).isEqualTo(100_002);
  }

  @Test
  void conditionalsInsideEachOther() {
    int deep = 50_000;
    String text = "#if 1\n".repeat(deep) + "#define A 1\n" + "#endif\n".repeat(deep);
    FirmwareFolder folder = folder("a.h", text);
    assertThat(folder.live("A")).isPresent();
    assertThat(folder.problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"(", "!", "-", "1 ? ", "1 + (", "A(", "defined(", "1 || !("})
  void aConditionNestedTooDeeply(String opener) {
    String text = "#define A(x) x\n#if " + opener.repeat(100_000) + "1\n#define B\n#endif\n";
    FirmwareFolder folder = folder("a.h", text);
    assertThat(folder.named("B").get(0).state()).isEqualTo(State.DEAD);
    assertThat(folder.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.line()).isEqualTo(2);
              assertThat(problem.text()).endsWith("; the condition counts as false");
            });
  }

  @Test
  void macrosThatDoubleEachOther() {
    StringBuilder text = new StringBuilder("#define M0 1 +\n");
    for (int i = 1; i <= 60; i++) {
      text.append("#define M").append(i).append(" M").append(i - 1).append(" M").append(i - 1);
      text.append('\n');
    }
    FirmwareFolder folder = folder("a.h", text + "#if M60 1\n#define B\n#endif\n");
    assertThat(folder.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains("more than 200000 tokens"));
  }

  @Test
  void argumentsThatDoubleEachOther() {
    String calls = "D(".repeat(60) + "1" + ")".repeat(60);
    FirmwareFolder folder =
        folder("a.h", "#define D(x) x + x\n#if " + calls + "\n#define B\n#endif\n");
    assertThat(folder.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains("tokens"));
  }

  @Test
  void inclusionsThatDoubleEachOther() {
    String[] files = new String[62];
    for (int i = 0; i <= 30; i++) {
      String next = "#include \"h" + (i + 1) + ".h\"\n";
      files[2 * i] = "h" + i + ".h";
      files[2 * i + 1] = i == 30 ? "#define LAST 1\n".repeat(1_000) : next + next;
    }
    FirmwareFolder folder = folder(files);
    assertThat(folder.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains("no more is included"));
  }

  @Test
  void aChainOfManyInclusions() {
    String[] files = new String[600];
    for (int i = 0; i < 300; i++) {
      files[2 * i] = String.format("h%03d.h", i);
      files[2 * i + 1] = String.format("#include \"h%03d.h\"\n#define N%d 1\n", i + 1, i);
    }
    assertThat(folder(files).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains("200 deep"));
  }

  @Test
  void aThousandProblemsAreEnough() {
    FirmwareFolder folder = folder("a.h", "#if 1 +\n#endif\n".repeat(5_000));
    assertThat(folder.problems()).hasSize(1_000);
  }

  @Test
  void nulBytesAreRefusedAndNothingIsEdited() {
    byte[] bytes = "#define A 1\n\0".getBytes(StandardCharsets.UTF_8);
    FirmwareFolder folder =
        FirmwareFolder.of(Path.of("f"), Map.of("a.h", bytes, "b.h", new byte[0]), Map.of());
    assertThat(folder.settings()).isEmpty();
    assertThat(folder.problems())
        .singleElement()
        .hasToString("a.h: this is not a text file (it holds NUL bytes); left alone");
    EditPlan plan = EditPlan.of(folder, List.of(new Change.SetValue("A", "2", "")));
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.Refused.class);
    assertThat(plan.files()).isEmpty();
  }

  @Test
  void aPragmaOperatorThatWouldChangeMacrosIsNamed() {
    String text = "#define A 1\n_Pragma(\"push_macro(\\\"A\\\")\")\n_Pragma(\"GCC ivdep\")\n";
    assertThat(folder("a.h", text).problems())
        .singleElement()
        .hasToString("a.h:2:1: _Pragma with push_macro is not acted on; a line #pragma … would be");
  }

  @Test
  void theReasonOfASettingUnderManyConditionsNamesTheNearest() {
    String text = "#if 1\n".repeat(300) + "#if 0\n#define A 1\n";
    byte[] bytes = text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    Setting setting = HeaderDocument.of("deep.h", bytes).settings().get(0);
    assertThat(setting.state()).isEqualTo(State.DEAD);
    assertThat(setting.reason())
        .startsWith("… (deep.h:289) is true: not listed further out; #if 1 (deep.h:290) is true")
        .endsWith("#if 0 (deep.h:301) is false");
  }

  @Test
  void thousandsOfConditionsOnADoublingMacroEndSoon() {
    StringBuilder text = new StringBuilder("#define M0 1 +\n");
    for (int i = 1; i <= 30; i++) {
      text.append("#define M").append(i).append(" M").append(i - 1).append(" M").append(i - 1);
      text.append('\n');
    }
    text.append("#if M30 > 1\n#endif\n".repeat(5_000))
        .append("#define N 2\n#if N == 2\n#define A\n");
    byte[] bytes =
        text.append("#endif\n").toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    FirmwareFolder folder =
        FirmwareFolder.of(
            java.nio.file.Path.of("f"), java.util.Map.of("x.h", bytes), java.util.Map.of());
    assertThat(folder.live("A")).isPresent();
    assertThat(folder.problems().get(0).toString()).contains("expands to more than 200000 tokens");
  }
}
