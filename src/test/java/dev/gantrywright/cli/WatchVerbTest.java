package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class WatchVerbTest {
  private static final String SANDPIPER = "demo-profiles/sandpiper.printer.json";

  @Test
  void printsARowASample() {
    CommandRun run =
        CommandRun.of("watch", SANDPIPER, "--for", "1.6", "--rate", "50", "--format", "csv");
    assertThat(run.status()).isEqualTo(ExitStatus.FINE);
    List<String> rows = run.out().lines().toList();
    assertThat(rows.get(0)).isEqualTo("seconds,latency_ms,state,xMax,yMax,zMin");
    assertThat(rows).hasSizeGreaterThan(20);
    assertThat(rows.subList(1, rows.size()))
        .allMatch(r -> r.matches("\\d+\\.\\d{6},\\d+\\.\\d{3},live(,(open|triggered)){3}"));
    // The practice hand touches the first one within the first second.
    assertThat(rows).anyMatch(r -> r.endsWith("triggered,open,open"));
  }

  @Test
  void printsOneJsonDocument() {
    CommandRun run = CommandRun.of("watch", SANDPIPER, "--for", "0.5", "--format", "json");
    JsonNode document = run.json();
    assertThat(document.path("endstops").size()).isEqualTo(3);
    assertThat(document.path("samples").size()).isPositive();
    assertThat(document.path("samples").get(0).path("endstops").path("xMax").asString())
        .isEqualTo("open");
  }

  @Test
  void printsALineAChange() {
    CommandRun run = CommandRun.of("watch", SANDPIPER, "--for", "0.4", "--rate", "100");
    assertThat(run.out().lines().toList()).hasSize(2);
    assertThat(run.out()).contains("xMax open  yMax open  zMin open").contains("samples,");
  }

  @Test
  void badNumbersAreRefused() {
    assertThat(CommandRun.of("watch", SANDPIPER, "--for", "-1").status())
        .isEqualTo(ExitStatus.USAGE);
    assertThat(CommandRun.of("watch", SANDPIPER, "--rate", "1e6").status())
        .isEqualTo(ExitStatus.USAGE);
    assertThat(CommandRun.of("watch", SANDPIPER, "--baud", "fast").err()).contains("'auto'");
    assertThat(CommandRun.of("watch", SANDPIPER, "--port", "/dev/no-such-port").status())
        .isEqualTo(ExitStatus.DEVICE);
  }
}
