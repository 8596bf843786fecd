package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class StepResponseCalculatorTest {
  @TempDir Path folder;

  /** 300 K at full power, 60 s, 2 s dead time, half power. */
  private Path recording(int seconds) throws IOException {
    StringBuilder csv = new StringBuilder("seconds,celsius\n");
    for (int t = 0; t <= seconds; t++) {
      double celsius = 20 + (t <= 2 ? 0 : 150 * (1 - Math.exp(-(t - 2) / 60.0)));
      csv.append(String.format(Locale.ROOT, "%d,%.4f%n", t, celsius));
    }
    return Files.writeString(folder.resolve("run.csv"), csv);
  }

  @Test
  void givesModelAndTermsByEachRule() throws IOException {
    JsonNode answer =
        CommandRun.of(
                "compute",
                "step-response",
                "--record",
                recording(480).toString(),
                "--power-step",
                "0.5",
                "--format",
                "json")
            .json();
    assertThat(answer.path("gainKelvin").asDouble()).isCloseTo(300, within(2.0));
    assertThat(answer.path("tauSeconds").asDouble()).isCloseTo(60, within(1.5));
    assertThat(answer.path("deadSeconds").asDouble()).isCloseTo(2, within(0.5));
    assertThat(answer.path("settled").asBoolean()).isTrue();
    assertThat(answer.path("rules").size()).isEqualTo(5);
  }

  @Test
  void saysWhatIsWrongWithARecording() throws IOException {
    CommandRun early =
        CommandRun.of(
            "compute",
            "step-response",
            "--record",
            recording(60).toString(),
            "--power-step",
            "0.5");
    assertThat(early.out()).contains("still rising").contains("power switch");
    Path bad = Files.writeString(folder.resolve("bad.csv"), "seconds,celsius\n0,20\n1,warm\n");
    CommandRun row =
        CommandRun.of(
            "compute", "step-response", "--record", bad.toString(), "--power-step", "0.5");
    assertThat(row.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(row.err()).contains("row 3 is '1,warm'");
    CommandRun none =
        CommandRun.of("compute", "step-response", "--record", "no.csv", "--power-step", "0.5");
    assertThat(none.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(none.err()).contains("no.csv cannot be read");
  }
}
