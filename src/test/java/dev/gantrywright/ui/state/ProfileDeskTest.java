package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileStore;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProfileDeskTest {
  private static final String STEPS = "axes.x.stepsPerMm";

  private ProfileDesk desk;

  @BeforeEach
  void open() throws Exception {
    desk =
        new ProfileDesk(
            ProfileStore.read(Path.of("demo-profiles/heron.printer.json")),
            Clock.fixed(Instant.parse("2026-01-01T12:00:00Z"), ZoneOffset.UTC));
  }

  @Test
  void anEditAppliesAtOnceAndIsNamed() {
    assertThat(desk.edit(STEPS, 80)).isEmpty();
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
    assertThat(desk.history().get().undoLabel()).contains("X steps/mm 160 → 80");
  }

  @Test
  void keystrokesThatAreOneStepAreNamedFromWhereItBegan() {
    desk.edit(STEPS, 8);
    desk.edit(STEPS, 80);
    assertThat(desk.history().get().undoLabel()).contains("X steps/mm 160 → 80");
    desk.undo();
    assertThat(desk.value(STEPS).orElseThrow().asDouble()).isEqualTo(160);
  }

  @Test
  void undoBringsTheValueBack() {
    desk.edit(STEPS, 80);
    desk.undo();
    assertThat(desk.value(STEPS).orElseThrow().asDouble()).isEqualTo(160);
    desk.redo();
    assertThat(desk.value(STEPS).orElseThrow().asDouble()).isEqualTo(80);
  }

  @Test
  void aValueOutOfRangeIsRefusedInOneLineAndChangesNothing() {
    assertThat(desk.edit(STEPS, -3))
        .hasValueSatisfying(line -> assertThat(line).startsWith("Steps/mm ").doesNotContain("\n"));
    assertThat(desk.edit("endstops.xMin.contact", "sometimes")).isPresent();
    assertThat(desk.revision()).isZero();
  }

  @Test
  void aValueCanBeTakenAwayAndGivenAgain() {
    assertThat(desk.edit("endstops.xMin.voltage", null)).isEmpty();
    assertThat(desk.value("endstops.xMin.voltage")).isEmpty();
    assertThat(desk.history().get().undoLabel()).contains("x min sensor voltage 3.3 → not given");
    assertThat(desk.edit("endstops.yMax.contact", "NC")).isEmpty();
    assertThat(desk.quoted("endstops.yMax.contact")).isEqualTo("NC");
  }

  @Test
  void listsAndMapsAreValuesLikeAnyOther() {
    assertThat(desk.edit("build.command", List.of("make", "all"))).isEmpty();
    assertThat(desk.profile().build().command()).containsExactly("make", "all");
    assertThat(desk.quoted("build.command")).isEqualTo("[\"make\",\"all\"]");
  }

  @Test
  void observersHearEveryChange() {
    List<Long> revisions = new ArrayList<>();
    desk.history().observe(history -> revisions.add(history.revision()));
    desk.edit("endstops.xMin.inverted", true);
    desk.undo();
    assertThat(revisions).containsExactly(0L, 1L, 2L);
    assertThat(desk.history().get().isSaved()).isTrue();
  }
}
