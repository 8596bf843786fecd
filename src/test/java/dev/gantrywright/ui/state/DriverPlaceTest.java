package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DriverPlaceTest {
  private static OpenPrinter heron() throws Exception {
    return new Opening().open(Path.of("demo-profiles/heron.printer.json"));
  }

  @Test
  void theSheetSaysHowManyThereAreAndTheProfileWhichAxisSitsWhere() throws Exception {
    OpenPrinter heron = heron();
    assertThat(DriverPlace.of(heron.profile(), Optional.of(heron.sheet())))
        .containsExactly(
            new DriverPlace("A", List.of("x")),
            new DriverPlace("B", List.of("y")),
            new DriverPlace("C", List.of("z")),
            new DriverPlace("D", List.of("e")));
  }

  @Test
  void aPlaceThatNoAxisNamesIsFreeAndOneThatTwoNameHasBoth() throws Exception {
    OpenPrinter heron = heron();
    var moved = ProfileValues.with(heron.profile(), "axes.y.driver.socket", "a");
    assertThat(DriverPlace.of(moved, Optional.of(heron.sheet())))
        .startsWith(new DriverPlace("A", List.of("x", "y")), new DriverPlace("B", List.of()));
  }

  @Test
  void withoutASheetThereAreThoseThatTheProfileNames() throws Exception {
    var profile = ProfileValues.with(heron().profile(), "axes.e.driver.socket", null);
    assertThat(DriverPlace.of(profile, Optional.empty()))
        .extracting(DriverPlace::name)
        .containsExactly("A", "B", "C", "e");
  }
}
