package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OutcomesTest {
  private final Outcomes outcomes = new Outcomes();
  private final StationState built = StationState.settled("route.built");
  private PrinterProfile heron;

  @BeforeEach
  void read() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
  }

  @Test
  void whatWasBuiltStandsAndGoesStaleVisiblyWithAnEdit() throws Exception {
    assertThat(outcomes.of(Stage.BUILD, heron)).isEmpty();
    outcomes.ended(Stage.BUILD, built, heron);
    assertThat(outcomes.of(Stage.BUILD, heron)).contains(built);
    PrinterProfile edited = ProfileValues.with(heron, "axes.x.stepsPerMm", 81);
    StationState stale = outcomes.of(Stage.BUILD, edited).orElseThrow();
    assertThat(stale.sign()).isEqualTo(StationState.Sign.OPEN);
    assertThat(stale.words()).isEqualTo("built, then edited");
    assertThat(outcomes.of(Stage.BUILD, heron)).as("undone again").contains(built);
  }

  @Test
  void whatTheBuildItselfMeasuresIsNoEdit() throws Exception {
    outcomes.ended(Stage.BUILD, built, heron);
    PrinterProfile measured = ProfileValues.with(heron, "build.image.bytes", 81_000);
    assertThat(outcomes.of(Stage.BUILD, measured)).contains(built);
  }

  @Test
  void anEditWhileItRanMakesItStaleAtOnce() throws Exception {
    outcomes.during(Stage.BUILD, StationState.open("build.running"), heron);
    PrinterProfile edited = ProfileValues.with(heron, "axes.x.stepsPerMm", 81);
    outcomes.ended(Stage.BUILD, built, edited);
    assertThat(outcomes.of(Stage.BUILD, edited).orElseThrow().words()).contains("then edited");
    assertThat(outcomes.of(Stage.BUILD, heron)).contains(built);
  }
}
