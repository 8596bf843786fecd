package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.board.Tool;
import dev.gantrywright.record.HistoryFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs what docs/pipelines.md tells people to run. */
class PipelinesPageTest {
  private static final Path PAGE = Path.of("docs/pipelines.md");

  @TempDir Path folder;
  private Path work;

  @BeforeEach
  void unpack() throws Exception {
    Tool.need("git", "xargs");
    work = DemoWorkshop.unpack(folder.resolve("workshop")).getParent();
    Path bin = Files.createDirectory(folder.resolve("bin"));
    script(
        bin.resolve("gantrywright"),
        "#!/bin/sh\nexec '"
            + Path.of(System.getProperty("java.home"), "bin", "java")
            + "' -XX:TieredStopAtLevel=1 -Xshare:auto -cp '"
            + System.getProperty("java.class.path")
            + "' dev.gantrywright.Gantrywright \"$@\"\n");
  }

  private static void script(Path file, String text) throws Exception {
    Files.writeString(file, text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** The fenced blocks of a kind, one after the other. */
  private static String blocks(String kind) throws Exception {
    Matcher fences =
        Pattern.compile("```" + kind + "\\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    StringBuilder all = new StringBuilder();
    while (fences.find()) {
      all.append(fences.group(1));
    }
    assertThat(all).isNotEmpty();
    return all.toString();
  }

  private record Ran(int status, String said) {}

  private Ran sh(String script) throws Exception {
    Path said = folder.resolve("said.txt");
    ProcessBuilder shell =
        new ProcessBuilder("sh", "-c", script)
            .directory(work.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    shell.environment().merge("PATH", "", (path, none) -> folder.resolve("bin") + ":" + path);
    shell.environment().put("GIT_CONFIG_GLOBAL", "/dev/null");
    shell.environment().put("GIT_CONFIG_SYSTEM", "/dev/null");
    Process process = shell.start();
    assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
    return new Ran(process.exitValue(), Files.readString(said));
  }

  private void git(String words) throws Exception {
    Ran ran = sh("git -c user.name=ida -c user.email=ida@example.org " + words);
    assertThat(ran.status()).as(ran.said()).isZero();
  }

  private void repository() throws Exception {
    git("init -q -b main");
    Files.writeString(work.resolve(".gitattributes"), blocks("gitattributes"));
    git("add -A");
    git("commit -q -m 'The workshop'");
  }

  @Test
  void theCommandsOfThePageDoWhatItSays() throws Exception {
    Ran ran = sh("set -e\n" + blocks("sh run") + "exit $status\n");

    assertThat(ran.said()).startsWith("as-built sheet: sandpiper-as-built.html\n");
    assertThat(ran.status()).as("Heron's errors decide").isEqualTo(1);
    JsonNode sarif = JsonMapper.shared().readTree(work.resolve("findings.sarif").toFile());
    assertThat(sarif.path("version").asString()).isEqualTo("2.1.0");
    assertThat(sarif.path("runs").get(0).path("results")).isNotEmpty();
    assertThat(Files.readString(work.resolve("findings.xml"))).contains("<testsuites");
    JsonNode fleet = JsonMapper.shared().readTree(work.resolve("fleet.json").toFile());
    assertThat(fleet.path("printers")).hasSize(3);
    assertThat(Files.readString(work.resolve("findings.txt"))).contains("Heron", "error");
    assertThat(Files.readString(work.resolve("differences.txt"))).contains("Guillemot");
    Path diff = work.resolve("sandpiper.diff");
    assertThat(Files.readString(diff, StandardCharsets.ISO_8859_1)).contains("--- a/config/");
    assertThat(Files.readString(work.resolve("sandpiper-as-built.html"))).contains("2026-03-02");
    Ran applied = sh("cd rookery-2.3 && git apply --check ../sandpiper.diff");
    assertThat(applied.status()).as(applied.said()).isZero();
  }

  @Test
  void theHookRefusesAPrinterWithAnErrorAndLetsTheOthersPass() throws Exception {
    repository();
    script(work.resolve(".git/hooks/pre-commit"), blocks("sh hook"));
    Path sandpiper = work.resolve("sandpiper.printer.json");
    Files.writeString(
        sandpiper, Files.readString(sandpiper).replace("\"name\": \"", "\"name\": \"New "));
    git("commit -q -am 'A printer that fits'");

    Path heron = work.resolve("heron.printer.json");
    Files.writeString(heron, Files.readString(heron).replace("bench 2", "bench 3"));
    Ran refused =
        sh("git -c user.name=ida -c user.email=ida@example.org commit -q -am 'One that does not'");

    assertThat(refused.status()).isNotZero();
    assertThat(refused.said()).contains("Heron", "GW-M001");
  }

  @Test
  void twoBranchesOfAHistoryMergeByThemselves() throws Exception {
    Path heron = work.resolve("heron.printer.json");
    CommandRun.of("history", heron.toString(), "--note", "shared");
    repository();
    git("checkout -q -b bench");
    CommandRun.of("history", heron.toString(), "--note", "on the bench");
    git("commit -q -am bench");
    git("checkout -q main");
    CommandRun.of("history", heron.toString(), "--note", "in the office");
    git("commit -q -am office");

    git("merge -q -m both bench");

    assertThat(HistoryFile.beside(heron).read().unread()).isEmpty();
    assertThat(HistoryFile.beside(heron).read().events())
        .extracting(event -> event.facts().path("text").asString())
        .containsExactlyInAnyOrder("shared", "on the bench", "in the office");
  }
}
