package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import java.io.BufferedReader;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window that is killed by the operating system loses nothing that was typed a second ago. */
class RestoreUseTest {
  @TempDir Path data;

  @Test
  void whatWasTypedComesBackAfterAKill() throws Exception {
    OpenWindow.toolkit();
    killedWhileTyping();
    try (OpenWindow second = new OpenWindow(data)) {
      PrinterDesk restored = second.heron();
      double steps = restored.profile().axes().get("x").stepsPerMm();
      assertThat(steps).isGreaterThanOrEqualTo(81).isNotEqualTo(160);
      assertThat(restored.values().history().get().isSaved()).isFalse();
      second.run(() -> restored.values().undo());
      assertThat(restored.profile().axes().get("x").stepsPerMm()).isEqualTo(160);
    }
  }

  /** Kills the process in the midst of typing, and of keeping what is typed: SIGKILL on Unix. */
  private void killedWhileTyping() throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
        .filter(option -> option.startsWith("-D"))
        .forEach(command::add);
    command.addAll(
        List.of(
            "-cp",
            System.getProperty("java.class.path"),
            KilledWindow.class.getName(),
            data.toString()));
    Process window =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try (BufferedReader said = window.inputReader()) {
      String line = said.readLine();
      while (line != null && !line.equals(KilledWindow.A_SECOND_LATER)) {
        line = said.readLine();
      }
      assertThat(line).as("the window typed").isNotNull();
      // Any moment will do: the file is whole at each.
      Thread.sleep(new Random().nextInt(200));
    } finally {
      window.destroyForcibly();
      assertThat(window.waitFor(60, TimeUnit.SECONDS)).isTrue();
    }
    assertThat(window.exitValue()).isNotZero();
  }
}
