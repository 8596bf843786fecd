package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PatchVerbTest {
  @TempDir Path dir;
  private Path folder;

  @BeforeEach
  void folder() throws Exception {
    folder = Files.createDirectories(dir.resolve("fw"));
    Files.writeString(folder.resolve("a.h"), "#define WING 1\r\n//#define TAIL\r\n#define BEAK 3");
  }

  @Test
  void printsTheDiffAndNothingElse() {
    CommandRun run = CommandRun.of("patch", folder.toString(), "--set", "WING=2", "--on", "TAIL");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .startsWith("diff -u a/a.h b/a.h\n--- a/a.h\n+++ b/a.h\n@@ ")
        .contains("+#define WING 2\r\n");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void gitAppliesWhatTheProgramPrints() throws Exception {
    Tool.need("git");
    Files.write(
        folder.resolve("l.h"),
        new byte[] {
          '#',
          'd',
          'e',
          'f',
          'i',
          'n',
          'e',
          ' ',
          'Q',
          ' ',
          '1',
          ' ',
          '/',
          '/',
          ' ',
          (byte) 0xb0,
          '\n'
        });
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int status =
        Cli.run(
            new BytePrinter(out, StandardCharsets.UTF_8),
            new BytePrinter(new ByteArrayOutputStream(), StandardCharsets.UTF_8),
            "patch",
            folder.toString(),
            "--set",
            "Q=2",
            "--set",
            "BEAK=4");
    assertThat(status).isZero();
    Path patch = Files.write(dir.resolve("x.patch"), out.toByteArray());
    Tool.mustRun(folder, "git", "apply", "--whitespace=nowarn", patch.toString());
    assertThat(Files.readAllBytes(folder.resolve("l.h"))).contains((byte) 0xb0).contains('2');
    assertThat(Files.readString(folder.resolve("a.h"))).endsWith("#define BEAK 4");
  }

  @Test
  void refusalsGoToStandardError() {
    CommandRun run = CommandRun.of("patch", folder.toString(), "--set", "NONE=2");
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("NONE");
  }

  @Test
  void writesThePatchedFolder() {
    Path out = dir.resolve("out");
    CommandRun run =
        CommandRun.of("patch", folder.toString(), "--set", "WING=2", "--out", out.toString());
    assertThat(run.status()).isZero();
    assertThat(out.resolve("a.h")).content().contains("WING 2");
    CommandRun again =
        CommandRun.of("patch", folder.toString(), "--set", "WING=2", "--out", out.toString());
    assertThat(again.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(again.err().lines()).hasSize(1).first().asString().contains("not empty");
    assertThat(
            CommandRun.of(
                    "patch",
                    folder.toString(),
                    "--set",
                    "WING=3",
                    "--out",
                    out.toString(),
                    "--replace")
                .status())
        .isZero();
  }

  @Test
  void jsonIsOneDocument() {
    CommandRun run =
        CommandRun.of("patch", folder.toString(), "--set", "WING=2", "--format", "json");
    assertThat(run.json().get("diff").asString()).contains("+#define WING 2");
    assertThat(run.json().get("lines").get(0).get("macro").asString()).isEqualTo("WING");
  }

  @Test
  void badUsageIsOneLine() throws Exception {
    Path profile = Files.writeString(dir.resolve("p.printer.json"), "{\"format\": 1, ");
    Path empty = Files.createDirectories(dir.resolve("empty"));
    for (String[] args :
        new String[][] {
          {"patch", folder.toString()},
          {"patch", folder.toString(), "--set", "WING"},
          {"patch", dir.resolve("none").toString(), "--on", "X"},
          {"patch", empty.toString(), "--on", "X"},
          {"patch", folder.toString(), "--profile", profile.toString()},
          {"patch", folder.toString(), "--profile", dir.resolve("no.json").toString()},
          {"patch", folder.toString(), "--on", "X", "--define", "1X"},
        }) {
      CommandRun run = CommandRun.of(args);
      assertThat(run.status()).as(String.join(" ", args)).isEqualTo(ExitStatus.USAGE);
      assertThat(run.out()).isEmpty();
      assertThat(run.err().lines()).as(run.err()).hasSize(1);
    }
  }
}
