package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EditPlanTest {
  private static FirmwareFolder folder(String text) {
    return FirmwareFolder.of(
        Path.of("rookery"), Map.of("perch.h", text.getBytes(StandardCharsets.UTF_8)), Map.of());
  }

  private static String after(String text, Change... changes) {
    EditPlan plan = EditPlan.of(folder(text), List.of(changes));
    assertThat(plan.outcomes()).allMatch(o -> o instanceof Outcome.Applied, "applied");
    assertThat(plan.inverse().result("perch.h")).isEqualTo(text.getBytes(StandardCharsets.UTF_8));
    return new String(plan.result("perch.h"), StandardCharsets.UTF_8);
  }

  private static String refusal(String text, Change change) {
    Outcome outcome = EditPlan.of(folder(text), List.of(change)).outcomes().get(0);
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    return ((Outcome.Refused) outcome).reason();
  }

  @Test
  void setsAValueAndKeepsTheCommentInItsColumn() {
    assertThat(after("#define A  5     // note\r\n#define B 1", set("A", "123")))
        .isEqualTo("#define A  123   // note\r\n#define B 1");
  }

  @Test
  void switchesOnAndOff() {
    assertThat(after("  //#define A 1 // x\n", new Change.SwitchOn("A", "")))
        .isEqualTo("  #define A 1 // x\n");
    assertThat(after("/* #define A 1 */\n", new Change.SwitchOn("A", "")))
        .isEqualTo("#define A 1\n");
    assertThat(after("/*#define A*/ /* in mm */\n", new Change.SwitchOn("A", "")))
        .isEqualTo("#define A /* in mm */\n");
    assertThat(after("  #define A \\\n 1\n", new Change.SwitchOff("A", "")))
        .isEqualTo("  //#define A \\\n 1\n");
  }

  @Test
  void setsAnElementOfANestedList() {
    assertThat(
            after(
                "#define L { 1, \\\n  { 2, 3 } }  // n\n",
                new Change.SetElement("L", List.of(1, 1), "42", "")))
        .isEqualTo("#define L { 1, \\\n  { 2, 42 } } // n\n");
  }

  @Test
  void insertsWithTheFilesLineEnd() {
    assertThat(after("#define A 1\r\n", new Change.InsertAfter("A", "#define B 2", "")))
        .isEqualTo("#define A 1\r\n#define B 2\r\n");
    assertThat(after("#define A 1", new Change.InsertAfter("A", "#define B 2", "")))
        .isEqualTo("#define A 1\n#define B 2");
  }

  @Test
  void aSwitchOpensTheWayForAValue() {
    String text = "//#define X\n#ifdef X\n#define Y 1\n#endif\n";
    assertThat(after(text, set("Y", "2"), new Change.SwitchOn("X", "")))
        .isEqualTo("#define X\n#ifdef X\n#define Y 2\n#endif\n");
  }

  @Test
  void refusesWhatWouldNotBeSafe() {
    assertThat(refusal("#define X 0\n#if X\n#define Y 1\n#endif\n", set("Y", "2")))
        .contains("not seen by the compiler");
    assertThat(refusal("#define F(x) x\n", set("F", "2"))).contains("function-like");
    assertThat(refusal("#define A 1\n", set("A", "2 // x"))).contains("comment mark");
    assertThat(refusal("#define A 1\n", set("A", "\"x"))).contains("not closed");
    assertThat(refusal("//#define A 1\n", set("A", "2"))).contains("commented out");
    assertThat(refusal("#define A 1\n", set("B", "2"))).contains("no header");
  }

  @Test
  void editsTheDefinitionThatDecides() {
    EditPlan plan =
        EditPlan.of(folder("#define A 1\n#undef A\n#define A 2\n"), List.of(set("A", "3")));
    assertThat(new String(plan.result("perch.h"), StandardCharsets.UTF_8))
        .isEqualTo("#define A 1\n#undef A\n#define A 3\n");
    assertThat(((Outcome.Applied) plan.outcomes().get(0)).note()).contains("perch.h:1");
  }

  @Test
  void aNewValueNeverTouchesTheName() {
    assertThat(after("#define A\"x\"\n", set("A", "(4 + 2)"))).isEqualTo("#define A (4 + 2)\n");
    assertThat(after("#define R\"(\n", set("R", "7"))).isEqualTo("#define R 7\n");
    assertThat(after("#define A+1 // n\n", set("A", "B"))).isEqualTo("#define A B // n\n");
  }

  private static List<Outcome> outcomes(String text, Change... changes) {
    return EditPlan.of(folder(text), List.of(changes)).outcomes();
  }

  private static void conflict(String text, Change first, Change second, String reason) {
    List<Outcome> outcomes = outcomes(text, first, second);
    assertThat(outcomes.get(0)).isInstanceOf(Outcome.Applied.class);
    assertThat(outcomes.get(1)).isEqualTo(new Outcome.Refused(reason));
  }

  @Test
  void namesBothChangesOfAConflictAndWhereItIs() {
    String text = "#define B 0\n#define L { 1, { 2, 3 } }\n//#define S\n";
    conflict(
        text,
        set("L", "{ 4, 5 }"),
        set("L", "{ 4, 6 }"),
        "change 2 (L = { 4, 6 }) conflicts with change 1 (L = { 4, 5 }): both are about the value"
            + " of L at perch.h:2; change 1 stands");
    conflict(
        text,
        new Change.SetElement("L", List.of(1, 0), "7", "bed.minimum = 7"),
        new Change.SetElement("L", List.of(1), "{ 8, 9 }", ""),
        "change 2 (L[1] = { 8, 9 }) conflicts with change 1 (bed.minimum = 7): both are about the"
            + " value of L at perch.h:2; change 1 stands");
    conflict(
        text,
        new Change.SwitchOn("S", ""),
        new Change.SwitchOff("S", ""),
        "change 2 (S off) conflicts with change 1 (S on): both are about the switch S at"
            + " perch.h:3; change 1 stands");
    assertThat(
            outcomes(
                text, set("B", "1"), set("L", "{ 4 }"), new Change.SetElement("L", 0, "5", "")))
        .last()
        .asString()
        .contains("change 3 (L[0] = 5) conflicts with change 2 (L = { 4 })");
  }

  @Test
  void changesThatAgreeOrStandSideBySideAreNoConflict() {
    String text = "#define L { 1, 2 } // note\n";
    assertThat(
            after(
                text,
                new Change.SetElement("L", 0, "5", "a"),
                new Change.SetElement("L", 1, "6", "b")))
        .isEqualTo("#define L { 5, 6 } // note\n");
    assertThat(outcomes(text, set("L", "{ 5, 6 }"), set("L", " { 5, 6 }")))
        .hasOnlyElementsOfTypes(Outcome.Applied.class, Outcome.AlreadySo.class);
  }

  @Test
  void everyElementOfALongListIsSetInOnePlan() {
    String old = "1, ".repeat(149) + "1";
    Change[] changes = new Change[150];
    Arrays.setAll(changes, i -> new Change.SetElement("L", i, "22", ""));
    assertThat(after("#define L { " + old + " }   // note\n", changes))
        .isEqualTo("#define L { " + old.replace("1", "22") + " } // note\n");
  }

  @Test
  void namesTwoEditsThatOverlap() {
    Edit one = new Edit(new Span(8, 12), "ab".getBytes(StandardCharsets.UTF_8));
    Edit two = new Edit(new Span(10, 14), "cd".getBytes(StandardCharsets.UTF_8));
    assertThatThrownBy(() -> FileEdits.of("perch.h", new byte[20], List.of(two, one)))
        .hasMessage("perch.h: \"ab\" for bytes 8 to 12 and \"cd\" for bytes 10 to 14 overlap");
  }

  private static Change set(String name, String value) {
    return new Change.SetValue(name, value, "");
  }
}
