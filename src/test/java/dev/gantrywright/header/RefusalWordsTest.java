package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What cannot be done is refused with the place and what stands there. */
class RefusalWordsTest {
  private static FirmwareFolder folder(String... pathsAndTexts) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return FirmwareFolder.of(Path.of("rookery"), files, Map.of());
  }

  private static String refused(FirmwareFolder folder, Change change) {
    EditPlan plan = EditPlan.of(folder, List.of(change));
    assertThat(plan.files()).isEmpty();
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.Refused.class);
    return ((Outcome.Refused) plan.outcomes().get(0)).reason();
  }

  @Test
  void anIncludeGuardStaysAsItIs() {
    FirmwareFolder folder =
        folder("perch.h", "#ifndef PERCH_H\n#define PERCH_H\n#define A 1\n#endif\n");
    String words = "PERCH_H at perch.h:2 is the include guard of its file; it stays as it is";
    assertThat(refused(folder, new Change.SwitchOff("PERCH_H", ""))).isEqualTo(words);
    assertThat(refused(folder, new Change.SetValue("PERCH_H", "2", ""))).isEqualTo(words);
    EditPlan plan = EditPlan.of(folder, List.of(new Change.SwitchOff("A", "")));
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.Applied.class);
  }

  @Test
  void anElementOutsideItsListNamesTheList() {
    FirmwareFolder folder = folder("a.h", "#define L { { 1, 2 }, { 3 } }\n#define N 4\n");
    assertThat(refused(folder, new Change.SetElement("L", List.of(2), "7", "")))
        .isEqualTo("L at a.h:1 has 2 elements, numbers 0 to 1; there is no number 2");
    assertThat(refused(folder, new Change.SetElement("L", List.of(1, 1), "7", "")))
        .isEqualTo("L[1] at a.h:1 has 1 element, number 0; there is no number 1");
    assertThat(refused(folder, new Change.SetElement("L", List.of(0, 1, 0), "7", "")))
        .isEqualTo("L[0][1] at a.h:1 is no brace list");
    assertThat(refused(folder, new Change.SetElement("N", List.of(0), "7", "")))
        .isEqualTo("N at a.h:2 is no brace list");
  }

  @Test
  void aBuildSettingWithoutAPlaceOrWithSeveral() {
    FirmwareFolder folder =
        folder("a.h", "", "a.ini", "[env]\nk = 1\n[own]\n", "b.ini", "[env]\nk = 2\n[own]\n");
    assertThat(refused(folder, new Change.SetKey("none", "k", "3", "")))
        .isEqualTo("[none] k: no build-settings file of the folder has a section [none]");
    assertThat(refused(folder, new Change.SetKey("env", "k", "3", "")))
        .isEqualTo(
            "[env] k stands in several build-settings files; edit one by hand: a.ini, b.ini");
    assertThat(refused(folder, new Change.SetKey("own", "k", "3", "")))
        .isEqualTo(
            "[own] k: its section stands in several build-settings files; edit one by hand:"
                + " a.ini, b.ini");
  }

  @Test
  void aNumberThatALeadingZeroSpoils() {
    assertThat(folder("a.h", "#if 08\n#endif\n#if 1.5\n#endif\n#undef\n").problems())
        .extracting(Problem::toString)
        .containsExactly(
            "a.h:1: \"08\" is not an integer; a 0 before it makes it octal; the condition counts as"
                + " false",
            "a.h:3: \"1.5\" is not an integer; the condition counts as false",
            "a.h:5: this #undef has no name");
  }

  @Test
  void theLevelOfInclusionIsToldToConditions() {
    String asks = "#if __INCLUDE_LEVEL__ == ";
    FirmwareFolder folder =
        folder(
            "a.h", "#include \"b.h\"\n" + asks + "0\n#define A\n#endif\n",
            "b.h", "#include \"c.h\"\n" + asks + "1\n#define B\n#endif\n",
            "c.h", asks + "2\n#define C\n#endif\n");
    assertThat(folder.live("A")).isPresent();
    assertThat(folder.live("B")).isPresent();
    assertThat(folder.live("C")).isPresent();
  }
}
