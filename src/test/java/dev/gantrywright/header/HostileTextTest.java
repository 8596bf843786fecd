package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Texts that would take hours or all memory without a limit or an index; with one they end, and
 * what is behind them is read as ever. {@code docs/benchmarks/header.sh fuzz} shows that time is
 * linear.
 */
class HostileTextTest {
  private static FirmwareFolder folder(Map<String, String> texts) {
    Map<String, byte[]> files = new TreeMap<>();
    texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
    return FirmwareFolder.of(Path.of("rookery"), files, Map.of());
  }

  private static FirmwareFolder folder(String text) {
    return folder(Map.of("a.h", text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#define F(x) x%s\n#if F(1%s)\n|+x|+1",
        "#define E\n#define F(x) x%s\n#if F(E%s)\n| x| E",
        "#define F(x) #x%s\n#if F(1%s)\n| #x| 1",
        "#define F(x) x%s\n#if F(b%s)\n|##x|"
      })
  void oneCallThatWouldMakeBillionsOfTokens(String kind) {
    String[] parts = kind.split("\\|", -1);
    String calls = String.format(parts[0], parts[1].repeat(60_000), parts[2].repeat(60_000));
    FirmwareFolder folder =
        folder(calls + "#define B\n#endif\n#define C 1\n#if C\n#define D\n#endif\n");
    assertThat(folder.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.text()).endsWith("; the condition counts as false");
              assertThat(problem.text())
                  .containsAnyOf("expands to more than", "nested or left open");
            });
    assertThat(folder.live("D")).isPresent();
  }

  @Test
  void aMacroOfTenThousandParameters() {
    StringBuilder names = new StringBuilder("p0");
    StringBuilder sum = new StringBuilder("p0");
    for (int i = 1; i < 10_000; i++) {
      names.append(", p").append(i);
      sum.append(" + p").append(i);
    }
    String text =
        "#define F(" + names + ") " + sum + "\n#if F(1" + ", 1".repeat(9_999) + ") == 10000\n";
    assertThat(folder(text + "#define A\n#endif\n").live("A")).isPresent();
  }

  @Test
  void aHeaderWithALongConditionIncludedThousandsOfTimes() {
    String inner = "#if 1" + "+1".repeat(200_000) + "\n#define B 1\n#endif\n";
    FirmwareFolder folder =
        folder(
            Map.of(
                "x.h",
                "#include \"y.h\"\n".repeat(30_000) + "#define C 1\n",
                "y.h",
                inner,
                "z.h",
                "#define Z 1\n"));
    assertThat(folder.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains("no more is included"));
    assertThat(folder.live("C")).isPresent();
    assertThat(folder.live("Z")).isPresent();
  }

  @Test
  void aGuardedHeaderIncludedThousandsOfTimesIsNoCircle() {
    String guarded = "#ifndef Y_H\n#define Y_H\n" + "#define A 1\n".repeat(3_000) + "#endif\n";
    FirmwareFolder folder =
        folder(Map.of("x.h", "#include \"y.h\"\n".repeat(5_000), "y.h", guarded));
    assertThat(folder.problems()).isEmpty();
  }

  @Test
  void headersThatEachAskForANameOfTheNext() {
    Map<String, String> files = new TreeMap<>();
    int count = 20_000;
    for (int i = 0; i < count; i++) {
      String text = "#ifdef N%d\n#define SEEN%d 1\n#endif\n#define N%d 1\n";
      files.put(String.format("h%06d.h", i), String.format(text, i + 1, i, i));
    }
    FirmwareFolder folder = folder(files);
    assertThat(folder.live("SEEN0")).isPresent();
    assertThat(folder.live("SEEN" + (count - 2))).isPresent();
    assertThat(folder.named("SEEN" + (count - 1)).get(0).state()).isEqualTo(State.OPEN);
  }

  @Test
  void openConditionsInEachOtherEndAsNotSettled() {
    int deep = 4_000;
    StringBuilder text = new StringBuilder("#define BEFORE 1\n");
    for (int i = 0; i < deep; i++) {
      text.append("#if X").append(i).append("\n#define A").append(i).append(" 1\n");
    }
    text.append("#endif\n".repeat(deep));
    text.append("#if A0\n#define B\n#endif\n#if BEFORE\n#define C\n#endif\n#define A0 2\n");
    FirmwareFolder folder = folder(text.toString());
    assertThat(folder.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).endsWith("counts as open"));
    assertThat(folder.named("A0").get(0).state()).isEqualTo(State.OPEN);
    assertThat(folder.named("B").get(0).state()).isEqualTo(State.OPEN);
    assertThat(folder.live("C")).isPresent();
    assertThat(folder.live("A0")).get().extracting(Setting::value).isEqualTo("2");
  }

  @Test
  void namesThatShareOneHash() {
    StringBuilder text = new StringBuilder();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < 2_000; i++) {
      StringBuilder name = new StringBuilder();
      for (int bit = 0; bit < 11; bit++) {
        name.append((i >> bit & 1) == 0 ? "Aa" : "BB");
      }
      names.add(name.toString());
      text.append("#define ").append(name).append(' ').append(i).append('\n');
    }
    assertThat(names.stream().mapToInt(String::hashCode).distinct().count()).isEqualTo(1);
    text.append("#if ").append(names.get(1_234)).append(" == 1234\n#define FOUND\n#endif\n");
    text.append("#undef ").append(names.get(77)).append('\n');
    FirmwareFolder folder = folder(text.toString());
    assertThat(folder.live("FOUND")).isPresent();
    assertThat(folder.live(names.get(77))).isEmpty();
    assertThat(folder.named(names.get(77))).hasSize(1);
    assertThat(folder.live(names.get(1_999))).get().extracting(Setting::value).isEqualTo("1999");
  }

  @Test
  void oneNameDefinedOftenIsFoundInFileOrder() {
    FirmwareFolder folder = folder("#define A 1\n#define B 1\n//#define A 2\n".repeat(3_000));
    List<Setting> all = folder.named("A");
    assertThat(all).hasSize(6_000);
    assertThat(all).extracting(Setting::line).isSorted();
    assertThat(all.get(1).on()).isFalse();
    assertThat(folder.named("B")).hasSize(3_000);
    assertThat(folder.named("C")).isEmpty();
  }

  @Test
  void commentedOutDefinitionsOnALineWithCodeAreNone() {
    String line = "/*#define A 1*/ ".repeat(20_000);
    assertThat(folder(line + "int x;\n").settings()).isEmpty();
    assertThat(folder(line + "\n").settings()).hasSize(1);
    assertThat(folder(line + "int x;\n/*#define B 1*/\n").settings()).hasSize(1);
  }

  @Test
  void aNameCutByAThousandSplices() {
    FirmwareFolder folder =
        folder("#define A" + "\\\n".repeat(30_000) + "B 1\n#if AB\n#define C\n#endif\n");
    assertThat(folder.live("C")).isPresent();
  }

  @Test
  void aCommentThatListsThousands() {
    FirmwareFolder folder =
        folder(
            "#define A 1 // one of 0"
                + ", 1".repeat(1_000)
                + ", 2\n#define B 1 // [a"
                + ", b".repeat(1_200)
                + "]\n");
    assertThat(folder.named("A").get(0).choices()).containsExactly("0", "1", "2");
    assertThat(folder.named("B").get(0).choices()).containsExactly("a", "b");
  }

  @Test
  void aWideGapInACommentHidesNothing() {
    String gap = " ".repeat(3_000);
    FirmwareFolder folder =
        folder("// ==== Wings" + gap + "====\n\n#define A 1 // between" + gap + "1 and 5 mm\n");
    Setting a = folder.named("A").get(0);
    assertThat(a.section()).isEqualTo("Wings");
    assertThat(a.range()).isEqualTo(new ValueRange(1, 5));
  }

  @Test
  void aReasonIsShortHoweverLongTheConditionAndItsMacro() {
    String sum = "1" + " + 1".repeat(50_000);
    FirmwareFolder folder =
        folder("#define L " + sum + "\n#if L && " + sum + "\n#define A 1\n#endif\n");
    assertThat(folder.named("A").get(0).reason())
        .startsWith("#if L && 1 + 1 + 1")
        .contains("… (a.h:2) is true: L is 1 + 1 + 1")
        .endsWith("… (a.h:1)")
        .hasSizeLessThan(250);
  }

  @Test
  void anErrorUnderConditionsInEachOtherEndsTheNearestOpenBranch() {
    FirmwareFolder folder =
        folder(
            "#if X\n#if 1\n#error no\n#endif\n#define A 1\n#else\n#define A 2\n#endif\n"
                + "#if A == 2\n#define B\n#endif\n");
    assertThat(folder.live("B")).isPresent();
  }
}
