package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  private Path diffOf(String... arguments) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> call = new ArrayList<>(List.of("patch", folder.toString()));
    call.addAll(List.of(arguments));
    CommandRun run = CommandRun.of(call.toArray(String[]::new));
    assertThat(run.status()).isZero();
    out.writeBytes(run.out().getBytes(StandardCharsets.UTF_8));
    return Files.write(dir.resolve("my.diff"), out.toByteArray());
  }

  @Test
  void aDiffIsReadBackAsAPlan() throws Exception {
    Path diff = diffOf("--set", "WING=2", "--on", "TAIL", "--set", "BEAK=4");
    Path patched = dir.resolve("patched");
    CommandRun run =
        CommandRun.of(
            "patch", folder.toString(), "--diff", diff.toString(), "--out", patched.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).isEqualTo(Files.readString(diff));
    assertThat(patched.resolve("a.h"))
        .hasContent("#define WING 2\r\n#define TAIL\r\n#define BEAK 4");
    assertThat(patched.resolve("gantrywright-manifest.json")).content().contains("--diff my.diff");
  }

  @Test
  void aDiffIsTakenBackOutToTheByte() throws Exception {
    byte[] original = Files.readAllBytes(folder.resolve("a.h"));
    Path diff = diffOf("--set", "WING=2", "--on", "TAIL", "--insert", "BEAK=#define CROP 5");
    Path patched = dir.resolve("patched");
    CommandRun.of(
        "patch", folder.toString(), "--diff", diff.toString(), "--out", patched.toString());
    assertThat(Files.readString(patched.resolve("a.h"))).contains("#define CROP 5");
    Path again = dir.resolve("again");
    CommandRun back =
        CommandRun.of(
            "patch",
            patched.toString(),
            "--diff",
            diff.toString(),
            "--back",
            "--out",
            again.toString(),
            "--format",
            "json");
    assertThat(back.status()).as(back.err()).isZero();
    assertThat(Files.readAllBytes(again.resolve("a.h"))).isEqualTo(original);
    assertThat(back.json().path("lines").get(0).path("value").asText())
        .isEqualTo("--back --diff my.diff");
    assertThat(back.json().path("lines").get(0).path("before").asText())
        .startsWith("#define WING 2");
  }

  @Test
  void aDiffThatDoesNotFitIsOneClearLine() throws Exception {
    Path diff = diffOf("--set", "WING=2");
    Files.writeString(folder.resolve("a.h"), "#define WING 7\n");
    CommandRun run = CommandRun.of("patch", folder.toString(), "--diff", diff.toString());
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().strip())
        .contains("line 1 is not what the diff expects")
        .doesNotContain("\n");
    CommandRun both =
        CommandRun.of("patch", folder.toString(), "--diff", diff.toString(), "--set", "WING=1");
    assertThat(both.err()).contains("--diff stands alone");
    assertThat(CommandRun.of("patch", folder.toString(), "--set", "WING=1", "--back").err())
        .contains("--back goes with --diff");
    CommandRun none =
        CommandRun.of("patch", folder.toString(), "--diff", dir.resolve("gone").toString());
    assertThat(none.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(none.err()).contains("no such file");
  }

  @Test
  void aLineIsAddedBehindADefinitionOnRequest() {
    CommandRun run =
        CommandRun.of("patch", folder.toString(), "--insert", "WING=#define FEATHERS 12");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains(" #define WING 1\r\n+#define FEATHERS 12\r\n");
    assertThat(
            CommandRun.of("patch", folder.toString(), "--insert", "NOWHERE=#define X 1").status())
        .isEqualTo(ExitStatus.FINDINGS);
    assertThat(CommandRun.of("patch", folder.toString(), "--insert", "WING").status())
        .isEqualTo(ExitStatus.USAGE);
  }
}
