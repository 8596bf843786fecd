package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.practice.EndstopInput;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A machine that reports a name of its own for an endstop: asked once, kept, never again. */
class EndNamesUseTest {
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

  /** The profile's machine, but it calls its first X end just "x". */
  private static PracticeBoard reportsX(PrinterProfile profile) {
    PracticeSetup s = PracticeMachine.of(profile);
    List<EndstopInput> ends =
        s.endstops().stream()
            .map(
                e ->
                    e.name().equals("xMin")
                        ? new EndstopInput("x", e.contact(), e.pull(), e.sensor(), e.inverted())
                        : e)
            .toList();
    return new PracticeBoard(
        new PracticeSetup(
            s.name(), s.identity(), ends, s.built(), s.heaters(), List.of(), List.of(), List.of()),
        1,
        System.nanoTime());
  }

  private boolean unsure() {
    return desk.link().proof().get().stream()
        .flatMap(report -> report.checks().stream())
        .anyMatch(check -> check.verdict() == Check.Verdict.UNSURE);
  }

  @Test
  void isAskedOnceAndKept() throws Exception {
    try (PracticeServer server =
        PracticeServer.listen(
            0, reportsX(desk.profile()), Wire.ideal(), System::nanoTime, Thread::new)) {
      open.type("#port-address", "tcp://127.0.0.1:" + server.port());
      open.click("#connect");
      open.until(() -> desk.link().live().get().fresh());
      open.click("#prove-now");
      open.until(this::unsure);
      ComboBox<?> choice = (ComboBox<?>) open.find("#end-choice-0").orElseThrow();
      assertThat(choice.getAccessibleText()).contains("“x”");
      assertThat(open.find("#end-keep-0").orElseThrow().isDisabled()).isTrue();
      open.run(() -> choice.getSelectionModel().select(0));
      assertThat(choice.getValue()).isEqualTo("xMin");
      open.click("#end-keep-0");
      assertThat(desk.profile().link().endstopNames()).isEqualTo(Map.of("x", "xMin"));
      open.until(() -> desk.link().live().get().fresh());
      open.click("#prove-now");
      open.until(() -> desk.link().proof().get().isPresent());
      assertThat(unsure()).isFalse();
      assertThat(open.find("#end-choice-0")).isEmpty();
    }
  }
}
