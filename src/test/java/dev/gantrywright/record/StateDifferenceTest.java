package dev.gantrywright.record;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class StateDifferenceTest {
  @Test
  void namesEveryValueThatDiffersInTheOrderOfTheFile() throws Exception {
    PrinterProfile left =
        profile(
            """
            {"format": 1, "name": "Heron", "serial": {"baud": 115200},
             "axes": {"x": {"stepsPerMm": 80, "maxSpeed": 200}},
             "build": {"command": ["make", "all"]},
             "bench": {"shelf": 2},
             "waivers": {"GW-S003@serial.baud": {"reason": "cable is short"}}}
            """);
    PrinterProfile right =
        profile(
            """
            {"format": 1, "name": "Heron", "serial": {"baud": 250000},
             "axes": {"x": {"stepsPerMm": 80.0}, "y": {"stepsPerMm": 80}},
             "build": {"command": ["make"]},
             "bench": 3}
            """);

    assertThat(StateDifference.of(left, right).stream().map(StateDifferenceTest::row))
        .containsExactly(
            "serial.baud: 115200 -> 250000",
            "axes.x.maxSpeed: 200 -> -",
            "axes.y.stepsPerMm: - -> 80",
            "build.command: [\"make\",\"all\"] -> [\"make\"]",
            "waivers.GW-S003@serial.baud.reason: \"cable is short\" -> -",
            "bench: {\"shelf\":2} -> 3");
  }

  @Test
  void aProfileDiffersInNothingFromItself() throws Exception {
    PrinterProfile heron = profile("{\"format\": 1, \"name\": \"Heron\"}");

    assertThat(StateDifference.of(heron, heron)).isEqualTo(List.of());
  }

  private static String row(StateDifference.Row row) {
    return row.path()
        + ": "
        + row.left().map(Object::toString).orElse("-")
        + " -> "
        + row.right().map(Object::toString).orElse("-");
  }

  private static PrinterProfile profile(String json) throws Exception {
    return ProfileStore.parse("test", json.getBytes(StandardCharsets.UTF_8));
  }
}
