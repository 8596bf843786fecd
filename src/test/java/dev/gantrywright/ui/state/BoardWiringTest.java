package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.ui.state.BoardWiring.Kind;
import dev.gantrywright.ui.state.BoardWiring.Row;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BoardWiringTest {
  private PrinterProfile heron;
  private BoardSheet fulmar;

  @BeforeEach
  void read() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
    fulmar = BoardStore.read(Path.of("demo-profiles/fulmar-m4.board.json"));
  }

  private BoardWiring wiring(PrinterProfile profile) {
    return BoardWiring.of(profile, Optional.of(fulmar));
  }

  private static Row row(BoardWiring wiring, Kind kind, String label) {
    return wiring.rows().stream()
        .filter(each -> each.kind() == kind && each.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> labels(BoardWiring wiring, Kind kind) {
    return wiring.rows().stream().filter(each -> each.kind() == kind).map(Row::label).toList();
  }

  @Test
  void everyConnectorOfTheSheetHasARow() {
    BoardWiring wiring = wiring(heron);
    assertThat(wiring.part()).isEqualTo("STM32F405RG");
    assertThat(wiring.clock()).isEqualTo("168\u00a0MHz");
    assertThat(labels(wiring, Kind.DRIVER)).containsExactlyElementsOf(fulmar.sockets().keySet());
    assertThat(labels(wiring, Kind.INPUT)).containsExactlyElementsOf(fulmar.inputs().keySet());
    assertThat(labels(wiring, Kind.OUTPUT)).containsExactlyElementsOf(fulmar.outputs().keySet());
    assertThat(labels(wiring, Kind.SENSOR)).containsExactlyElementsOf(fulmar.sensors().keySet());
    assertThat(labels(wiring, Kind.PORT)).containsExactly("USB", "SERIAL", "PANEL", "drivers");
    assertThat(row(wiring, Kind.CARD, "card").plugged()).isEqualTo("FULMAR.IMG");
    assertThat(row(wiring, Kind.SUPPLY, "12…26\u00a0V").plugged())
        .isEqualTo("24\u00a0V · 15\u00a0A");
  }

  @Test
  void aConnectorSaysWhatIsPluggedInAndWithWhichPins() {
    BoardWiring wiring = wiring(heron);
    Row socket = row(wiring, Kind.DRIVER, "A");
    assertThat(socket.plugged()).isEqualTo("X axis");
    assertThat(socket.opens()).isEqualTo("axes.x");
    assertThat(socket.detail()).isEqualTo("TMC2209");
    assertThat(socket.pins()).containsExactly("PB0", "PB1", "PB12", "PB10");
    assertThat(row(wiring, Kind.INPUT, "STOP3").opens()).isEqualTo("endstops.zMin");
    assertThat(row(wiring, Kind.INPUT, "STOP6").plugged()).isEmpty();
    assertThat(row(wiring, Kind.OUTPUT, "BED").opens()).isEqualTo("heaters.bed");
    assertThat(row(wiring, Kind.SENSOR, "T-HOT").pins()).containsExactly("PA0");
  }

  /** Heron's console is on the port that the drivers listen on: its pin has two jobs. */
  @Test
  void aPinWithTwoJobsIsNamedWithBoth() throws Exception {
    BoardWiring wiring = wiring(heron);
    assertThat(wiring.troubles()).hasSize(1);
    assertThat(wiring.troubles().get(0)).contains("PB10", "console", "UART to the drivers");
    assertThat(row(wiring, Kind.PORT, "drivers").twice()).containsExactly("PB10");
    assertThat(row(wiring, Kind.DRIVER, "C").twice()).containsExactly("PB10");
    PrinterProfile moved = ProfileValues.with(heron, "serial.port", 1);
    assertThat(wiring(moved).troubles()).isEmpty();
    assertThat(row(wiring(moved), Kind.DRIVER, "C").twice()).isEmpty();
    PrinterProfile shared = ProfileValues.with(moved, "endstops.yMin.pin", "STOP1");
    assertThat(wiring(shared).troubles()).hasSize(1);
    assertThat(wiring(shared).troubles().get(0)).contains("PC0", "x min", "y min");
  }

  @Test
  void whatTheSheetDoesNotHaveStandsAsNotOnIt() throws Exception {
    PrinterProfile odd = ProfileValues.with(heron, "axes.z.driver.socket", "K");
    odd = ProfileValues.with(odd, "endstops.zMin.pin", null);
    odd = ProfileValues.with(odd, "serial.port", 7);
    BoardWiring wiring = wiring(odd);
    assertThat(row(wiring, Kind.DRIVER, "C").plugged()).isEmpty();
    Row stray = row(wiring, Kind.DRIVER, "K");
    assertThat(stray.onBoard()).isFalse();
    assertThat(stray.plugged()).isEqualTo("Z axis");
    assertThat(row(wiring, Kind.INPUT, "").plugged()).isEqualTo("z min");
    assertThat(row(wiring, Kind.PORT, "").detail()).isEqualTo("7");
    assertThat(wiring.words()).contains("socket K TMC2209: Z axis, not on the board sheet");
  }

  @Test
  void withoutASheetThereIsWhatTheProfileSaysAndNoMore() {
    BoardWiring wiring = BoardWiring.of(heron, Optional.empty());
    assertThat(wiring.sheet()).isFalse();
    assertThat(wiring.clock()).isEmpty();
    assertThat(wiring.rows()).noneMatch(Row::onBoard).allMatch(row -> row.pins().isEmpty());
    assertThat(labels(wiring, Kind.DRIVER)).containsExactly("A", "B", "C", "D");
    assertThat(wiring.words()).startsWith("No board sheet is open.");
  }
}
