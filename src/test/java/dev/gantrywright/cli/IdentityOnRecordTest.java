package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the patched folder gives a firmware to say of itself is asked for without an option. */
class IdentityOnRecordTest {
  @TempDir Path folder;

  private Path heron;
  private Path release;

  @BeforeEach
  void unpack() throws Exception {
    heron = DemoWorkshop.unpack(folder.resolve("workshop"));
    release = heron.resolveSibling("rookery-2.3");
    change(
        release.resolve("config/nest.h"),
        "#define NEST_TITLE",
        "#define NEST_STAMP        \"2026-03-02 8c1f\" // set by hand for each round\n"
            + "#define NEST_TITLE");
    change(
        heron.resolveSibling("rookery-2.3.names.json"),
        "\"fields\" : {",
        "\"fields\" : {\n    \"identity.date\" : {\"macro\": \"NEST_STAMP\", \"file\":"
            + " \"config/nest.h\"},");
  }

  private static void change(Path file, String from, String to) throws Exception {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    assertThat(text).contains(from);
    Files.writeString(
        file, text.replaceFirst(from.replace("{", "\\{"), to), StandardCharsets.UTF_8);
  }

  private void export(String out) {
    CommandRun run =
        CommandRun.of(
            "patch",
            release.toString(),
            "--profile",
            heron.toString(),
            "--history",
            "on",
            "--out",
            folder.resolve(out).toString());
    assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.FINE);
  }

  private String identity(String... more) {
    String[] args = new String[more.length + 4];
    System.arraycopy(
        new String[] {"prove", heron.toString(), "--port", "practice:"}, 0, args, 0, 4);
    System.arraycopy(more, 0, args, 4, more.length);
    String out = CommandRun.of(args).out();
    return out.substring(out.indexOf("identity:")).lines().limit(4).toList().toString();
  }

  @Test
  void theFirmwareOfTheLastPatchedFolderIsRecognised() throws Exception {
    assertThat(identity()).contains("pass").contains("name: expected").doesNotContain("date:");
    export("patched");
    assertThat(identity()).contains("pass    date: expected 2026-03-02 8c1f");
    assertThat(identity("--folder", folder.resolve("patched").toString()))
        .contains("pass    date: expected 2026-03-02 8c1f");
  }

  @Test
  void anOlderFirmwareOnTheBoardIsNamed() throws Exception {
    export("first");
    change(release.resolve("config/nest.h"), "2026-03-02 8c1f", "2026-04-07 11aa");
    export("second");
    assertThat(identity("--folder", folder.resolve("first").toString()))
        .contains("fail    date: expected 2026-04-07 11aa, seen practice firmware")
        .contains("another firmware is on the board");
    // A wish of the user's counts before the record.
    assertThat(
            identity("--folder", folder.resolve("first").toString(), "--expect", "date=2026-03-02"))
        .contains("pass    date: expected 2026-03-02");
  }
}
