package dev.gantrywright.patch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Planning again after an edit gives the plan that planning from nothing gives. */
class PatchPlannerTest {
  private OpenPrinter heron;
  private PatchPlanner planner;

  @BeforeEach
  void open() throws Exception {
    heron = new Opening().open(Path.of("demo-profiles/heron.printer.json"));
    planner = new PatchPlanner(heron.names(), heron.folder());
  }

  private void samePlan(PrinterProfile profile, String edit) {
    PatchPlan again = planner.plan(profile);
    PatchPlan fresh = PatchPlan.of(profile, heron.names(), heron.folder());
    assertThat(again.lines()).as(edit).isEqualTo(fresh.lines());
    assertThat(again.refusals()).as(edit).isEqualTo(fresh.refusals());
    assertThat(again.unchanged()).as(edit).isEqualTo(fresh.unchanged());
    assertThat(again.after().keySet()).as(edit).isEqualTo(fresh.after().keySet());
    fresh.after().forEach((path, bytes) -> assertThat(again.after().get(path)).isEqualTo(bytes));
    assertThat(again.diff()).as(edit).isEqualTo(fresh.diff());
    assertThat(again.patched().settings()).as(edit).isEqualTo(fresh.patched().settings());
  }

  private static Object other(Field field, JsonNode was, Random chance) {
    return switch (field.type()) {
      case FLAG -> was == null || !was.booleanValue();
      case CHOICE -> field.choices().get(chance.nextInt(field.choices().size()));
      case INTEGER -> was == null ? 1 + chance.nextInt(4) : was.intValue() + chance.nextInt(3) - 1;
      case NUMBER -> was == null ? 10.0 + chance.nextInt(90) : was.doubleValue() * 1.5;
      default -> was == null ? "PERCH_FULMAR_M4" : was.asString() + "x";
    };
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void afterAnyWalkOfEdits(long seed) {
    Random chance = new Random(seed);
    List<String> mapped = new ArrayList<>(heron.names().fields().keySet());
    PrinterProfile now = heron.profile();
    samePlan(now, "as opened");
    int taken = 0;
    for (int step = 0; step < 80; step++) {
      String path = mapped.get(chance.nextInt(mapped.size()));
      Field field = Fields.at(path).orElseThrow();
      JsonNode was = ProfileValues.get(now, path).orElse(null);
      Object value = chance.nextInt(8) == 0 ? null : other(field, was, chance);
      try {
        now = ProfileValues.with(now, path, value);
        taken++;
      } catch (ProfileProblem refused) {
        // Outside the field's range: the walk goes on from where it is.
        continue;
      }
      samePlan(now, step + ": " + path + " = " + value);
    }
    assertThat(taken).isGreaterThan(30);
  }

  @Test
  void anotherBoardBringsOtherLinesToLifeAndBack() throws Exception {
    PrinterProfile petrel =
        ProfileValues.with(heron.profile(), "board.constant", "PERCH_PETREL_81");
    samePlan(heron.profile(), "this board");
    samePlan(petrel, "the other");
    samePlan(heron.profile(), "this board again");
  }

  @Test
  void anEditThatTheFolderDoesNotCarryKeepsThePlan() throws Exception {
    PatchPlan first = planner.plan(heron.profile());
    assertThat(planner.plan(ProfileValues.with(heron.profile(), "notes", "new belt")))
        .isSameAs(first);
  }
}
