package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.LoggedLines;
import dev.gantrywright.link.Reply;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A heater's step response: from a file, and recorded on the practice board. */
class HeaterUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.click("#stage-prove");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private String words(String id) {
    return ((Label) open.window().scene().lookup(id)).getText();
  }

  private void connected() throws Exception {
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
  }

  private String heaters() throws Exception {
    Reply reply = desk.link().session().orElseThrow().askAndWait("M105");
    return reply.lines().toString();
  }

  @Test
  void aRecordingGivesModelTermsAndPicture() throws Exception {
    List<StepResponse.Point> points = new ArrayList<>();
    for (int t = 0; t <= 600; t += 5) {
      double rise = t <= 5 ? 0 : 120 * (1 - Math.exp(-(t - 5) / 80.0));
      points.add(new StepResponse.Point(t, 21 + rise));
    }
    Path file = data.resolve("step.csv");
    Files.writeString(file, new StepResponse("hotend", 0.5, points).csv());
    open.type("#heater-file", file.toString());
    open.click("#heater-fit");
    open.until(() -> !words("#heater-model").isEmpty());
    // 120 K at half power; what the fit makes of a time constant of 80 s and a dead time of 5 s.
    assertThat(words("#heater-model"))
        .matches("Gain 2(39|40)\\.?\\d* K at full power, time constant \\d+.*dead time \\d.*");
    assertThat(open.find("#heater-picture").orElseThrow().isVisible()).isTrue();
    assertThat(open.find("#heater-terms").orElseThrow().lookupAll(".label")).hasSize(4 * 6);
    open.type("#heater-file", data.resolve("none.csv").toString());
    open.click("#heater-fit");
    open.until(() -> words("#heater-model").contains("cannot be read"));
  }

  @Test
  void aRunNeedsArmingRecordsAndSwitchesOff() throws Exception {
    assertThat(open.find("#heater-begin").orElseThrow().isDisabled()).isTrue();
    connected();
    assertThat(open.find("#heater-begin").orElseThrow().isDisabled()).isTrue();
    open.click("#heater-arm");
    open.until(() -> desk.link().armed().get());
    // The practice hot end passes 23.5 °C within seconds: the limit ends the run.
    open.type("#heater-limit", "23.5");
    open.click("#heater-begin");
    open.until(() -> words("#heater-standing").startsWith("The limit was reached"));
    assertThat(desk.link().armed().get()).isFalse();
    assertThat(heaters()).contains("hotend").contains("power 0.00").doesNotContain("power 0.50");
    try (Stream<Path> kept = Files.list(desk.printer().file().getParent())) {
      Path csv =
          kept.filter(f -> f.toString().endsWith("hotend-step.csv")).findFirst().orElseThrow();
      assertThat(StepResponse.ofCsv("hotend", 0.5, Files.readString(csv)).points())
          .hasSizeGreaterThan(2);
    }
    assertThat(open.find("#heater-picture").orElseThrow().isVisible()).isTrue();
    open.until(() -> recorded("practice board: hotend at 50 % of its power"));
  }

  /** The record at the end of the stage shows it without being opened again. */
  private boolean recorded(String words) {
    return open.window().scene().getRoot().lookupAll(".label").stream()
        .map(node -> ((javafx.scene.control.Label) node).getText())
        .anyMatch(text -> text.startsWith(words));
  }

  @Test
  void aLimitBeyondWhatTheHeaterMayHaveIsRefusedWithItsReason() throws Exception {
    connected();
    open.click("#heater-arm");
    open.until(() -> desk.link().armed().get());
    for (String limit : List.of("900", "NaN", "Infinity", "1e400")) {
      open.type("#heater-limit", limit);
      assertThat(open.find("#heater-begin").orElseThrow().isDisabled()).as(limit).isTrue();
    }
    open.type("#heater-limit", "900");
    open.until(() -> words("#heater-standing").startsWith("900 °C is too much: hotend may go up"));
    open.type("#heater-limit", "60");
    open.until(() -> words("#heater-standing").startsWith("Connect, look that nothing"));
    assertThat(open.find("#heater-begin").orElseThrow().isDisabled()).isFalse();
  }

  @Test
  void theStopKeyEndsARun() throws Exception {
    connected();
    open.click("#heater-arm");
    open.until(() -> desk.link().armed().get());
    open.click("#heater-begin");
    open.until(() -> words("#heater-standing").startsWith("Heating"));
    open.pressTwice(KeyCode.ESCAPE);
    open.until(() -> words("#heater-standing").startsWith("Broken off"));
    assertThat(heaters()).doesNotContain("power 0.50");
    assertThat(desk.link().armed().get()).isFalse();
  }

  @Test
  void endingByHandAndDisconnectingSwitchTheHeaterOff() throws Exception {
    connected();
    open.click("#heater-arm");
    open.until(() -> desk.link().armed().get());
    open.click("#heater-begin");
    open.until(() -> words("#heater-standing").startsWith("Heating"));
    var session = desk.link().session().orElseThrow();
    open.click("#disconnect");
    open.until(() -> session.state() == dev.gantrywright.link.SessionState.CLOSED);
    assertThat(LoggedLines.with(session.log(), "POWER hotend S0"))
        .anyMatch(row -> row.endsWith("> POWER hotend S0"));
    open.until(() -> !words("#heater-standing").startsWith("Heating"));
  }
}
