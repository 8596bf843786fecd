package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeatVerbTest {
  @TempDir Path folder;
  private Path profile;

  @BeforeEach
  void copy() throws IOException {
    profile = folder.resolve("sandpiper.printer.json");
    Files.copy(Path.of("demo-profiles/sandpiper.printer.json"), profile);
  }

  private CommandRun heat(String typed, String... more) {
    List<String> call = new ArrayList<>(List.of("heat", profile.toString(), "hotend"));
    call.addAll(Arrays.asList(more));
    return TypedInput.typing(typed, call.toArray(String[]::new));
  }

  @Test
  void theCautionComesFirstAndOnlyTheWordHeats() throws IOException {
    for (String typed : List.of("", "\n", "yes\n", "heat\n")) {
      CommandRun not = heat(typed);
      assertThat(not.out())
          .startsWith("WARNING: the heater runs at a set power")
          .contains("on:  POWER hotend S0.5", "off: POWER hotend S0", "type HEAT")
          .contains("the heater was left cold");
      assertThat(not.status()).isEqualTo(ExitStatus.FINE);
    }
    assertThat(files()).containsExactly("sandpiper.printer.json");
  }

  @Test
  void aRunEndsWithTheHeaterOffAndItsReadingsKept() throws IOException {
    CommandRun run = heat("HEAT\n", "--longest", "1.2", "--history", "on");
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isEqualTo(ExitStatus.FINE);
    assertThat(run.out()).contains("recorded; the heater is off, the line disarmed");
    assertThat(files()).contains("sandpiper.hotend-step.csv");
    assertThat(Files.readString(folder.resolve("sandpiper.hotend-step.csv")).lines().count())
        .isGreaterThanOrEqualTo(3);
    assertThat(Files.readString(folder.resolve("sandpiper.history.jsonl")))
        .contains("\"kind\":\"heat-up\"", "\"practice\":true", "sandpiper.hotend-step.csv");
    CommandRun again = heat("HEAT\n", "--longest", "0.6", "--limit", "10", "--history", "off");
    assertThat(Files.readAllLines(folder.resolve("sandpiper.history.jsonl"))).hasSize(1);
    assertThat(again.out()).contains("the limit was reached; the heater is off");
    assertThat(files()).contains("sandpiper.hotend-step-2.csv");
  }

  @Test
  void theDocumentStandsAloneOnStandardOutput() {
    CommandRun run = heat("HEAT\n", "--longest", "0.6", "--format", "json");
    assertThat(run.json().path("heater").asString()).isEqualTo("hotend");
    assertThat(run.json().path("ending").asString()).isEqualTo("recorded");
    assertThat(run.err()).contains("WARNING", "type HEAT");
  }

  @Test
  void aHeaterThatIsNotReportedStaysColdAndIsNamed() {
    CommandRun run =
        TypedInput.typing("HEAT\n", "heat", profile.toString(), "oven", "--longest", "1");
    assertThat(run.status()).isEqualTo(ExitStatus.DEVICE);
    assertThat(run.err())
        .contains("no temperature of 'oven'", "if in doubt, switch the power off")
        .doesNotContain("\tat ");
    assertThat(run.err().strip().lines()).hasSize(1);
  }

  /** The oven stands in no profile, so nobody can say what its sensor reads. */
  @Test
  void aLimitAboveWhatIsKnownIsRefusedWithItsReason() {
    CommandRun unknown =
        TypedInput.typing("HEAT\n", "heat", profile.toString(), "oven", "--limit", "130");
    assertThat(unknown.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(unknown.err())
        .contains("--limit is 130 °C; oven may go up to 125 °C: neither its maximum nor");
    assertThat(heat("HEAT\n", "--limit", "276").err())
        .contains("hotend may go up to 275 °C: the profile allows no more");
  }

  @Test
  void whatCannotBeSafeIsRefusedBeforeAnythingIsAsked() {
    for (List<String> bad :
        List.of(
            List.of("--power", "0"),
            List.of("--power", "1.2"),
            List.of("--power", "NaN"),
            List.of("--longest", "0"),
            List.of("--longest", "90000"),
            List.of("--limit", "900"),
            List.of("--limit", "NaN"),
            List.of("--port", "tcp://127.0.0.1:1"),
            List.of("--port", "tcp://127.0.0.1:1", "--on", "M104 S200"))) {
      CommandRun run = heat("HEAT\n", bad.toArray(String[]::new));
      assertThat(run.status()).as(bad.toString()).isEqualTo(ExitStatus.USAGE);
      assertThat(run.out()).isEmpty();
      assertThat(run.err().strip().lines()).hasSize(1);
    }
  }

  private List<String> files() throws IOException {
    try (var all = Files.list(folder)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
