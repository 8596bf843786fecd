package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a change comes to: done, there already, or refused with the reason and the places. */
class PlannedChangeTest {
  private static EditPlan plan(String text, Change change) {
    FirmwareFolder folder =
        FirmwareFolder.of(
            Path.of("rookery"), Map.of("a.h", text.getBytes(StandardCharsets.UTF_8)), Map.of());
    return EditPlan.of(folder, List.of(change));
  }

  private static String refused(String text, Change change) {
    EditPlan plan = plan(text, change);
    assertThat(plan.files()).isEmpty();
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.Refused.class);
    return ((Outcome.Refused) plan.outcomes().get(0)).reason();
  }

  private static void already(String text, Change change) {
    EditPlan plan = plan(text, change);
    assertThat(plan.files()).isEmpty();
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.AlreadySo.class);
  }

  private static String done(String text, Change change) {
    EditPlan plan = plan(text, change);
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.Applied.class);
    return new String(plan.result("a.h"), StandardCharsets.UTF_8);
  }

  private static Change on(String name) {
    return new Change.SwitchOn(name, "");
  }

  private static Change off(String name) {
    return new Change.SwitchOff(name, "");
  }

  private static Change value(String name, String value) {
    return new Change.SetValue(name, value, "");
  }

  @Test
  void aValueThatStandsThereIsLeft() {
    already("#define A 5 // x\n", value("A", "5"));
    already("#define A 5 // x\n", value("A", " 5 "));
    already("#define L { 1, 2 }\n", new Change.SetElement("L", List.of(1), "2", ""));
  }

  @Test
  void whatWouldBreakTheLineIsNoValue() {
    for (String value : List.of("5\n#define B 1", "5 // x", "5 /*", "\"open", "5 \\")) {
      assertThat(refused("#define A 5\n", value("A", value))).as(value).startsWith("A: ");
    }
    assertThat(refused("#define L { 1 }\n", new Change.SetElement("L", List.of(0), "1, 2", "")))
        .startsWith("L: ");
  }

  @Test
  void switchingOnTakesTheOneLineThatCanBeSeen() {
    already("#define A 1\n", on("A"));
    already("//#define A 2\n#define A 1\n", on("A"));
    assertThat(refused("#define B 1\n", on("A"))).isEqualTo("no header of the folder defines A");
    assertThat(refused("//#define A 1\n//#define A 2\n", on("A")))
        .startsWith("A is commented out in several places; switch one on by hand: ")
        .contains("a.h:1", "a.h:2");
    assertThat(refused("#if 0\n//#define A 1\n#endif\n", on("A")))
        .startsWith("A is not seen by the compiler at a.h:2: ");
    assertThat(refused("#if 0\n#define A 1\n#endif\n", on("A")))
        .startsWith("A is not seen by the compiler at a.h:2: ");
    assertThat(done("#if 0\n//#define A 1\n#else\n//#define A 2\n#endif\n", on("A")))
        .isEqualTo("#if 0\n//#define A 1\n#else\n#define A 2\n#endif\n");
    assertThat(done("#ifdef GIVEN\n//#define A 1\n#endif\n//#define A 2\n", on("A")))
        .isEqualTo("#ifdef GIVEN\n//#define A 1\n#endif\n#define A 2\n");
    assertThat(done("#ifdef GIVEN\n//#define A 1\n#endif\n", on("A")))
        .isEqualTo("#ifdef GIVEN\n#define A 1\n#endif\n");
    EditPlan open = plan("#ifdef GIVEN\n//#define A 1\n#endif\n", on("A"));
    assertThat(((Outcome.Applied) open.outcomes().get(0)).note())
        .startsWith("whether it counts is open: ")
        .contains("GIVEN");
  }

  @Test
  void switchingOffTakesTheOneThatCounts() {
    already("//#define A 1\n", off("A"));
    assertThat(refused("#define B 1\n", off("A"))).contains("A");
    assertThat(refused("#define A 1\n#undef A\n#define A 2\n", off("A")))
        .startsWith("A is defined in several live places; switch them off by hand: ")
        .contains("a.h:1", "a.h:3");
    assertThat(refused("#define A 1 /* two\nlines */\n", off("A")))
        .isEqualTo("A at a.h:1 has a comment that runs over several lines; switch it off by hand");
    assertThat(done("#if 0\n#define A 1\n#else\n#define A 2\n#endif\n", off("A")))
        .isEqualTo("#if 0\n#define A 1\n#else\n//#define A 2\n#endif\n");
  }

  @Test
  void aLineIsInsertedBehindOnePlace() {
    Change insert = new Change.InsertAfter("A", "#define B 2", "");
    assertThat(done("#define A 1\n#define C 3\n", insert))
        .isEqualTo("#define A 1\n#define B 2\n#define C 3\n");
    assertThat(done("#define A 1", insert)).startsWith("#define A 1\n#define B 2");
    already("#define A 1\n#define B 2\n", insert);
    assertThat(refused("#define C 1\n", insert)).isEqualTo("no header of the folder defines A");
    assertThat(refused("//#define A 1\n//#define A 2\n", insert))
        .startsWith("A stands in several places; the line has no one place: ")
        .contains("a.h:1", "a.h:2");
    assertThat(done("//#define A 1\n#define A 2\n", insert))
        .isEqualTo("//#define A 1\n#define A 2\n#define B 2\n");
    assertThat(refused("#define A 1\n", new Change.InsertAfter("A", "#if 1", ""))).isNotEmpty();
  }
}
