package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.gantrywright.Gantrywright;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.record.Timeline;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The program without a verb and without a display, as a process of its own. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class TerminalJobTest {
  @TempDir Path folder;

  private String told(String history) throws Exception {
    return told(history, ExitStatus.FINE);
  }

  private String told(String history, int status) throws Exception {
    assumeTrue(
        System.getProperty("os.name").equals("Linux"), "other systems always have a display");
    ProcessBuilder job =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Dfile.encoding=UTF-8",
            "-Djava.io.tmpdir=" + folder,
            "-cp",
            System.getProperty("java.class.path"),
            Gantrywright.class.getName());
    job.environment().remove("DISPLAY");
    job.environment().remove("WAYLAND_DISPLAY");
    job.environment().put("GANTRYWRIGHT_HISTORY", history);
    Process process = job.redirectErrorStream(true).start();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(told).isEqualTo(status);
    return told;
  }

  private static Path profile(String told) {
    Matcher record = Pattern.compile("profile with the remedies: (.*)").matcher(told);
    assertThat(record.find()).as(told).isTrue();
    return Path.of(record.group(1));
  }

  @Test
  void theJobIsToldStageByStageAndKeptOnRecord() throws Exception {
    String told = told("on");
    assertThat(told)
        .contains("no display here")
        .containsSubsequence(
            "\nDescribe ", "\nCheck ", "\nWrite ", "\nBuild ", "\nLoad ", "\nProve ", "\nRecord ")
        .containsPattern("profile was: 1 of \\d+ comparisons differ")
        .containsPattern("as patched: +\\d+ comparisons agree");
    Path profile = profile(told);
    Timeline past = PrinterHistory.beside(profile).timeline();
    assertThat(past.events().stream().map(event -> event.kind()))
        .containsExactly("proof", "export", "proof");
    assertThat(past.events().get(0).facts().path("passed").asBoolean(true)).isFalse();
    assertThat(past.events().get(2).facts().path("passed").asBoolean(false)).isTrue();
    assertThat(CommandRun.of("check", profile.toString()).status()).isEqualTo(ExitStatus.FINE);
    assertThat(CommandRun.of("history", profile.toString()).out())
        .containsPattern("proof +practice board: 1 of \\d+ comparisons differ")
        .containsPattern("export +rookery-2.3");
  }

  @Test
  void aRunThatShallLeaveTheHistoryOutKeepsTheProfileAlone() throws Exception {
    Path profile = profile(told("off"));
    try (var files = Files.list(profile.getParent())) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .contains(profile.getFileName().toString())
          .noneMatch(name -> name.endsWith(".history.jsonl"));
    }
    assertThat(CommandRun.of("check", profile.toString()).status()).isEqualTo(ExitStatus.FINE);
  }

  @Test
  void aMistypedSwitchOfTheHistoryIsToldBeforeAnythingIsWritten() throws Exception {
    assertThat(told("of", ExitStatus.USAGE))
        .endsWith("GANTRYWRIGHT_HISTORY: 'of' is not known; known are on, off\n");
    try (var files = Files.list(folder)) {
      assertThat(files.map(Path::toString)).noneMatch(name -> name.contains("gantrywright-"));
    }
  }
}
