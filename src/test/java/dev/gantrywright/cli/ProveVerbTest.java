package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class ProveVerbTest {
  private static final String HERON = "demo-profiles/heron.printer.json";
  private static final String SANDPIPER = "demo-profiles/sandpiper.printer.json";

  @TempDir Path folder;

  @Test
  void findsThePlantedPolarityAndIsSatisfiedWhenItIsRemedied() throws IOException {
    CommandRun before = CommandRun.of("prove", HERON, "--port", "practice:");
    assertThat(before.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(before.out()).contains("fail    endstops.zMin.inverted").contains("not proven");

    Path remedied = folder.resolve("heron.printer.json");
    Files.writeString(
        remedied,
        Files.readString(Path.of(HERON)).replace("\"inverted\": true", "\"inverted\": false"));
    CommandRun after = CommandRun.of("prove", remedied.toString(), "--port", "practice:");
    assertThat(after.out()).contains("proven:");
    assertThat(after.status()).isEqualTo(ExitStatus.FINE);
  }

  @Test
  void theFirmwareMayBeBuiltOtherwiseThanTheProfileSays() {
    CommandRun run =
        CommandRun.of("prove", SANDPIPER, "--built", "axes.x.stepsPerMm=160", "--format", "json");
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
    JsonNode failed =
        run.json()
            .path("checks")
            .valueStream()
            .filter(c -> c.path("verdict").asString().equals("fail"))
            .findFirst()
            .orElseThrow();
    assertThat(failed.path("path").asString()).isEqualTo("axes.x.stepsPerMm");
    assertThat(failed.path("seen").asString()).isEqualTo("160");
    assertThat(failed.path("advice").asString()).contains("2.0000");
    assertThat(run.json().path("explanation").asString()).contains("overrides");
    assertThat(run.json().path("linesToSend").toString()).isEqualTo("[\"M92 X80\",\"M500\"]");
  }

  @Test
  void aMachineMayBeParkedOnASwitch() {
    assertThat(CommandRun.of("prove", SANDPIPER, "--touched", "zMin").status())
        .isEqualTo(ExitStatus.FINE);
  }

  @Test
  void theIdentityIsCompared() {
    CommandRun right = CommandRun.of("prove", SANDPIPER, "--expect", "name=sandpiper");
    assertThat(right.status()).isEqualTo(ExitStatus.FINE);
    CommandRun wrong = CommandRun.of("prove", SANDPIPER, "--expect", "version=9.9");
    assertThat(wrong.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(wrong.out()).contains("another firmware is on the board");
  }

  @Test
  void storedSettingsAreSentOnlyToWhoeverTypesTheWord() {
    String[] call = {"prove", SANDPIPER, "--fault", "stored:x.stepsPerMm:82", "--send"};
    for (String words : List.of("", "\n", "yes\n", "send\n")) {
      CommandRun not = TypedInput.typing(words, call);
      assertThat(not.out())
          .contains("WARNING: these lines change how far")
          .contains("M92 X80; M500")
          .contains("nothing was sent");
      assertThat(not.status()).isEqualTo(ExitStatus.FINDINGS);
    }
    CommandRun sent = TypedInput.typing("SEND\n", call);
    assertThat(sent.out()).contains("not proven").contains("sent; the line is disarmed");
    assertThat(sent.out().substring(sent.out().indexOf("sent; "))).contains("\nproven:");
    assertThat(sent.status()).isEqualTo(ExitStatus.FINE);
    assertThat(TypedInput.typing("SEND\n", "prove", SANDPIPER, "--send").out())
        .contains("nothing to send");
    assertThat(CommandRun.of("prove", SANDPIPER, "--send", "--format", "json").status())
        .isEqualTo(ExitStatus.USAGE);
  }

  @Test
  void badInputIsOneLine() {
    assertThat(CommandRun.of("prove", "no-such.printer.json").status()).isEqualTo(2);
    CommandRun port = CommandRun.of("prove", SANDPIPER, "--port", "ftp://x");
    assertThat(port.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(port.err().strip().lines()).hasSize(1);
    CommandRun fault = CommandRun.of("prove", SANDPIPER, "--fault", "melted:xMin");
    assertThat(fault.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(fault.err()).contains("no fault of the practice board");
  }

  @Test
  void aPortThatIsNotThereIsNamed() {
    CommandRun run = CommandRun.of("prove", SANDPIPER, "--port", "/dev/no-such-port");
    assertThat(run.status()).isEqualTo(ExitStatus.DEVICE);
    assertThat(run.err()).contains("no port '/dev/no-such-port'").contains("plug the board in");
    CommandRun tcp = CommandRun.of("prove", SANDPIPER, "--port", "tcp://127.0.0.1:1");
    assertThat(tcp.status()).isEqualTo(ExitStatus.DEVICE);
    assertThat(tcp.err()).contains("127.0.0.1:1 cannot be reached");
  }

  @Test
  void theTouchTestRunsInTheTerminal() {
    CommandRun right = CommandRun.of("prove", SANDPIPER, "--touch");
    assertThat(right.out())
        .contains("CAUTION")
        .contains("Press and hold xMax")
        .contains("zMin works");
    assertThat(right.status()).isEqualTo(ExitStatus.FINE);
    CommandRun wrong =
        CommandRun.of(
            "prove", SANDPIPER, "--touch", "--fault", "swapped:xMax:yMax", "--format", "json");
    assertThat(wrong.status()).isEqualTo(ExitStatus.FINDINGS);
    JsonNode x =
        wrong
            .json()
            .path("touchTest")
            .valueStream()
            .filter(r -> r.path("end").asString().equals("xMax"))
            .findFirst()
            .orElseThrow();
    assertThat(x.path("verdict").asString()).isEqualTo("swapped");
  }

  @Test
  void aReportedNameIsToldOnceAndKept() throws IOException {
    Path profile = folder.resolve("sandpiper.printer.json");
    Files.copy(Path.of(SANDPIPER), profile);
    CommandRun told =
        CommandRun.of(
            "prove", profile.toString(), "--endstop", "left lid=xMin", "--history", "off");
    assertThat(told.status()).isEqualTo(ExitStatus.FINE);
    assertThat(Files.readString(profile)).containsPattern("\"left lid\": *\"xMin\"");
    CommandRun wrong = CommandRun.of("prove", profile.toString(), "--endstop", "lid=wMax");
    assertThat(wrong.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(wrong.err()).contains("no endstop 'wMax'").contains("xMin");
  }

  @Test
  void onlyAUsbPortIsRememberedAndAMissingMemoryIsSaid() {
    CommandRun remember = CommandRun.of("prove", SANDPIPER, "--remember", "--history", "off");
    assertThat(remember.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(remember.err()).contains("practice: is no USB port");
    CommandRun kept = CommandRun.of("prove", SANDPIPER, "--port", "usb:", "--history", "off");
    assertThat(kept.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(kept.err()).contains("link.usb");
  }
}
