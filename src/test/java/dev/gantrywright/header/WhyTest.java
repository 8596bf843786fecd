package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The account of a setting's state, through conditions (C17 6.10.1) and inclusions (6.10.2). */
class WhyTest {
  private static FirmwareFolder folder(String... pathsAndTexts) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return FirmwareFolder.of(Path.of("rookery"), files, Map.of());
  }

  private static Why of(FirmwareFolder folder, String name) {
    return Why.of(folder, folder.named(name).get(0));
  }

  private static String words(String text, String name) {
    return of(folder("a.h", text), name).words();
  }

  @Test
  void aLineUnderNoCondition() {
    assertThat(words("#define A 1\n", "A")).isEqualTo("The compiler takes this line.");
    assertThat(words("//#define A 1\n", "A"))
        .isEqualTo("This line is commented out; switched on, the compiler would take it.");
  }

  @Test
  void aDeadLineNamesTheConditionThatIsFalse() {
    String text = "#define N 2\n#ifdef N\n#if N > 4 // many\n#define A 1\n#endif\n#endif\n";
    assertThat(words(text, "A"))
        .isEqualTo(
            "The compiler leaves this line out: #if N > 4 (a.h:3) is false: N is 2 (a.h:1).");
  }

  @Test
  void aLiveLineNamesAllItsConditions() {
    String text = "#define N 5\n#ifdef N\n#if N > 4\n#define A 1\n#endif\n#endif\n";
    assertThat(words(text, "A"))
        .isEqualTo(
            "The compiler takes this line, since #ifdef N (a.h:2) is true: N is 5 (a.h:1);"
                + " #if N > 4 (a.h:3) is true: N is 5 (a.h:1).");
  }

  @Test
  void aBranchThatIsNotReachedNamesTheOneThatWasTaken() {
    String text = "#define N 2\n#if N == 2\n#elif N == 3\n#define B\n#else\n#define A 1\n#endif\n";
    String taken = "is not reached: #if N == 2 (a.h:2) is true: N is 2 (a.h:1).";
    assertThat(words(text, "A"))
        .isEqualTo("The compiler leaves this line out: #else (a.h:5) " + taken);
    assertThat(words(text, "B"))
        .isEqualTo("The compiler leaves this line out: #elif N == 3 (a.h:3) " + taken);
  }

  @Test
  void anOpenLineNamesWhatNobodySettles() {
    String text = "#ifdef __FAST__\n#define A 1\n#endif\n";
    assertThat(words(text, "A"))
        .isEqualTo(
            "Whether the compiler takes this line is open: #ifdef __FAST__ (a.h:1) is open:"
                + " __FAST__ is not settled by this folder.");
  }

  @Test
  void theChainGoesThroughTheIncludingFiles() {
    FirmwareFolder folder =
        folder(
            "a.h", "#define WINGS 0\n",
            "b.h", "#ifndef B_H\n#define B_H\n#define B 1\n#endif\n",
            "main.c", "#include \"a.h\"\n#if WINGS\n#include \"b.h\"\n#endif\n");
    assertThat(of(folder, "B").words())
        .isEqualTo(
            "The compiler leaves this line out: the whole file (b.h:1) is not reached: no #include"
                + " of it is taken.");
    FirmwareFolder on = folder.with("a.h", "#define WINGS 2\n".getBytes(StandardCharsets.UTF_8));
    assertThat(of(on, "B").chain())
        .singleElement()
        .satisfies(
            condition -> {
              assertThat(condition.file()).isEqualTo("main.c");
              assertThat(condition.line()).isEqualTo(2);
              assertThat(condition.outcome()).isEqualTo(Why.Outcome.TRUE);
              assertThat(condition.because()).isEqualTo("WINGS is 2 (a.h:1)");
            });
  }

  @Test
  void aLaterDefinitionOrRemovalIsTold() {
    assertThat(words("#define A 1\n#undef A\n#define A 2\n", "A"))
        .isEqualTo("The compiler takes this line; but a.h:3 defines it anew and decides.");
    assertThat(words("#define A 1\n#undef A\n", "A"))
        .endsWith("; but afterwards the name is taken away, or an open condition may change it.");
  }

  @Test
  void aFaultyConditionIsTold() {
    assertThat(words("#if 1 +\n#define A\n#endif\n", "A"))
        .contains("#if 1 + (a.h:1) is false: the condition breaks off");
  }
}
