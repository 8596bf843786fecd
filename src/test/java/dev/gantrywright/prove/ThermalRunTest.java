package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Peer;
import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.Sessions;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermalRunTest {
  private static final ThermalRun RUN =
      new ThermalRun("hotend", "POWER hotend S0.5", "POWER hotend S0", 0.5, 250, 600, 0.05);

  @Test
  void recordsOnAnArmedLineAndSwitchesOff() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      assertThatThrownBy(() -> RUN.record(session, System::nanoTime, () -> false))
          .isInstanceOf(LinkException.class)
          .hasMessageContaining("arm this connection first");
      session.arm();
      AtomicInteger asked = new AtomicInteger();
      StepResponse response =
          RUN.record(session, System::nanoTime, () -> asked.incrementAndGet() > 5);
      assertThat(response.points()).hasSize(6);
      assertThat(response.points().get(0).celsius()).isEqualTo(20);
      assertThat(session.askAndWait("M105").lines().get(0)).contains("power 0.00");
    }
  }

  @Test
  void endsAboveTheHighestTemperatureAndWhenStopped() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      session.arm();
      ThermalRun cold =
          new ThermalRun("hotend", "POWER hotend S1", "POWER hotend S0", 1, 10, 60, 0.01);
      assertThat(cold.record(session, System::nanoTime, () -> false).points()).hasSize(1);
      assertThat(RUN.record(session, System::nanoTime, () -> true).points()).hasSize(1);
      ThermalRun other =
          new ThermalRun("oven", "POWER hotend S1", "POWER hotend S0", 1, 50, 1, 0.01);
      assertThatThrownBy(() -> other.record(session, System::nanoTime, () -> false))
          .hasMessageContaining("no temperature of 'oven'");
    }
  }

  @Test
  void aLineThatIsDisarmedMeanwhileIsStopped() throws Exception {
    try (Peer peer = Peer.of(Peer.Kind.MEMORY, PracticeMachines.board());
        LineSession session = Sessions.up(peer.connector())) {
      session.arm();
      assertThatThrownBy(
              () -> RUN.record(session, System::nanoTime, () -> false, p -> session.disarm()))
          .isInstanceOf(LinkException.class)
          .hasMessageContaining("arm this connection first")
          .hasMessageContaining("the stop was sent. The machine confirmed");
      assertThat(session.askAndWait("M105").lines().get(0)).contains("power 0.00");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hotend = 23.40 C, target 0.0 C, power 0.00|hotend|23.4",
        "T:21.3 /0.0 B:20.1 /0.0|B|20.1",
        "bed:60|bed|60",
        "T: -3.5|T|-3.5"
      })
  void readsTemperatures(String line, String name, double celsius) {
    assertThat(TemperatureReader.read(List.of(line))).containsEntry(name, celsius);
  }

  @Test
  void aRecordedRunIsReadBack() {
    StepResponse response =
        new StepResponse(
            "bed", 1, List.of(new StepResponse.Point(0, 20), new StepResponse.Point(1.5, 20.25)));
    assertThat(StepResponse.ofCsv("bed", 1, response.csv())).isEqualTo(response);
    assertThatThrownBy(() -> StepResponse.ofCsv("bed", 1, "s,c\n1,20\nx,21\n"))
        .hasMessageContaining("row 3");
    assertThatThrownBy(() -> StepResponse.ofCsv("bed", 1, "s,c\n1,20\n0,21\n"))
        .hasMessageContaining("back in time");
    assertThatThrownBy(() -> new StepResponse("bed", 0, List.of()))
        .hasMessageContaining("power step");
  }
}
