package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class RemediesTest {
  private static final RuleBook BOOK = StandardBook.open();

  /** A reversed endstop, settled safely, and steps/mm, which somebody should look at. */
  private static final String TWO_FAULTS =
      "{\"endstops\": {\"xMin\": {\"inverted\": true}}, \"axes\": {\"x\": {\"stepsPerMm\": 160}}}";

  private static CheckInput faulty() {
    return Workshop.printer("guillemot", TWO_FAULTS);
  }

  @Test
  void allSafeOnesAreTakenAndNoOther() throws Exception {
    CheckInput input = faulty();
    assertThat(slugs(BOOK.check(input))).contains("polarity-reversed", "steps-disagree-with-drive");
    Remedies.Outcome outcome = Remedies.applySafe(BOOK, input);
    assertThat(outcome.settled()).isTrue();
    assertThat(outcome.applied())
        .extracting(applied -> applied.finding().slug())
        .containsExactly("polarity-reversed");
    assertThat(outcome.applied())
        .extracting(applied -> applied.remedy().safety())
        .containsOnly(Safety.SAFE);
    assertThat(value(outcome.input(), "endstops.xMin.inverted")).isEqualTo("false");
    assertThat(value(outcome.input(), "axes.x.stepsPerMm")).isIn("160", "160.0");
    assertThat(value(input, "endstops.xMin.inverted")).as("the input stays").isEqualTo("true");
  }

  @Test
  void thoseToLookAtAreTakenWhenAskedFor() throws Exception {
    Remedies.Outcome outcome = Remedies.applyAll(BOOK, faulty(), Safety.REVIEW);
    assertThat(outcome.settled()).isTrue();
    assertThat(outcome.applied())
        .extracting(applied -> applied.finding().slug())
        .containsExactlyInAnyOrder("polarity-reversed", "steps-disagree-with-drive");
    assertThat(BOOK.check(outcome.input())).noneMatch(finding -> finding.level() == Level.ERROR);
  }

  @Test
  void aWaivedFindingKeepsItsFault() throws Exception {
    CheckInput input = faulty();
    Finding reversed =
        BOOK.check(input).stream()
            .filter(finding -> finding.slug().equals("polarity-reversed"))
            .findFirst()
            .orElseThrow();
    Waiver waiver = Waivers.waive(reversed, "bench rig", "2026-03-01");
    var tree = ProfileValues.tree(input.profile());
    tree.putObject("waivers")
        .putObject(reversed.key())
        .put("reason", waiver.reason())
        .put("evidence", waiver.evidence())
        .put("date", waiver.date());
    CheckInput waived =
        input.with(ProfileStore.parse("waived", tree.toString().getBytes(StandardCharsets.UTF_8)));
    assertThat(Remedies.applySafe(BOOK, waived).applied()).isEmpty();
  }

  @Test
  void findingsStandWorstFirstThenByFamilyRuleAndPlace() {
    List<Finding> sorted =
        List.of(
            finding(Level.ERROR, Family.BOARD, "GW-B001", "board.mcu"),
            finding(Level.ERROR, Family.MOTION, "GW-M001", "axes.x.stepsPerMm"),
            finding(Level.ERROR, Family.MOTION, "GW-M001", "axes.y.stepsPerMm"),
            finding(Level.ERROR, Family.MOTION, "GW-M009", "axes.x.travelMin"),
            finding(Level.WARNING, Family.BOARD, "GW-B007", "board.target"),
            finding(Level.NOTE, Family.BOARD, "GW-B010", "board.mcu"));
    List<Finding> mixed = new ArrayList<>(sorted);
    Collections.reverse(mixed);
    mixed.sort(Finding.WORST_FIRST);
    assertThat(mixed).isEqualTo(sorted);
    assertThat(Level.values()).extracting(Level::word).containsExactly("error", "warning", "note");
  }

  private static Finding finding(Level level, Family family, String id, String path) {
    return new Finding(id, "slug", level, family, path, path, "", "", "", List.of(), "");
  }

  private static List<String> slugs(List<Finding> findings) {
    return findings.stream().map(Finding::slug).toList();
  }

  private static String value(CheckInput input, String path) {
    return ProfileValues.get(input.profile(), path).orElseThrow().toString();
  }
}
