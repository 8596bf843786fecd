package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Calls that are wrong, as somebody at the bench gives them, and the one line that each brings:
 * what, where, what to do, and no word of the libraries beneath.
 */
class PlainMessagesTest {
  @TempDir Path folder;

  @BeforeEach
  void files() throws IOException {
    for (String name : new String[] {"heron", "sandpiper"}) {
      Files.copy(
          Path.of("demo-profiles", name + ".printer.json"), folder.resolve(name + ".printer.json"));
    }
    Files.copy(
        Path.of("demo-profiles/fulmar-m4.board.json"), folder.resolve("fulmar-m4.board.json"));
    Files.createDirectory(folder.resolve("fw"));
    Files.writeString(folder.resolve("fw/a.h"), "#define LINE_RATE 115200\n");
    Files.writeString(folder.resolve("cut.json"), "{\"format\": 1,");
    Files.writeString(folder.resolve("comment.json"), "// mine\n{}");
    Files.writeString(folder.resolve("bare.json"), "{\"format\": 1, \"name\": Heron}");
    Files.writeString(folder.resolve("none.txt"), "# no machine\n");
    Files.write(folder.resolve("bytes.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // a wrong value
        "check heron.printer.json --format xml | --format: 'xml' is not known; known are text, json",
        "compute steps-per-mm --microsteps x --lead 8 | --microsteps: 'x' is not a number;",
        "compute steps-per-mm --microsteps 16 --lead 1,5 | the decimal sign is a point",
        "practice sandpiper.printer.json --listen x | --listen: 'x' is not a whole number",
        "watch sandpiper.printer.json --endstop x | --endstop: 'x' is no NAME=END",
        "image heron.printer.json --offset x | --offset: 'x' is no count of bytes",
        "watch sandpiper.printer.json --for 1 --baud x | --baud is 'x'",
        "heat sandpiper.printer.json hotend --power 3 | --power is 3; a number above 0",
        "compute nosuch | there is no calculator 'nosuch'; there are steps-per-mm",
        // a file that is none, or another one
        "check cut.json | the file ends too soon",
        "check comment.json | '/' does not belong here",
        "check bare.json | 'Heron' does not belong here: a text stands in quotes",
        "check fulmar-m4.board.json | is a board sheet; give a printer profile",
        "image heron.printer.json --board heron.printer.json | is a printer profile; give a board",
        "names fw --keep heron.printer.json | give a name map, *.names.json",
        "compute step-response --record bytes.csv --power-step 0.5 | (it is no UTF-8 text)",
        "compute step-response --record no.csv --power-step 0.5 | (no such file or folder)",
        "fleet . --prove none.txt | names no machine",
        "fleet . --prove no.txt | (no such file)",
        // a path of the wrong kind
        "check heron.printer.json --folder no | no: there is no such folder; give the firmware",
        "sheet heron.printer.json --out x.pdf --folder cut.json | is a file; give the firmware",
        "fleet cut.json | is a file; give the folder of profiles",
        "check _ | one of the words is empty",
        "names _ | the path is empty",
        // what contradicts, or would be passed over
        "check heron.printer.json --page GW-M001 | leave the profiles out",
        "check --page GW-M001 --format sarif | --page prints text or json",
        "build heron.printer.json --delete | --delete goes with --clean",
        "build heron.printer.json --in fw --names x | --names does not go with --in",
        "load heron.printer.json --to fw -- echo {file} | a command of your own needs --by",
        "load heron.printer.json --by --to fw -- echo {file} | --to does not go with --by",
        "load heron.printer.json --drives | is not loaded by a call that only looks",
        "load --drives --kept | give one of --drives",
        "load fw/a.h --by --for heron.printer.json | keeps no flashing command; enter it in build.flash",
        "patch fw --set LINE_RATE=1 --replace | --replace goes with --out",
        "patch fw --set LINE_RATE=1 --names x | --names goes with --profile",
        "fleet . --at-once 3 | --at-once goes with --prove PORTS",
        "fleet . --release a --board b | --board and --release do not go together",
        "history heron.printer.json --note _ | --note is empty",
        "practice sandpiper.printer.json --for -1 | --for must not be negative",
        "prove sandpiper.printer.json --names x | --names goes with --folder",
        // what the printer does not have
        "watch sandpiper.printer.json --fault stuck:qMin:open | no fitted endstop 'qMin'; it has xMax",
        "watch sandpiper.printer.json --fault stored:q.stepsPerMm:1 | no axis 'q'; it has x, y, z, e",
        "watch sandpiper.printer.json --touched xMin | no fitted endstop 'xMin'",
        "prove sandpiper.printer.json --built no.path=1 | 'no.path' is nothing that the practice",
        "prove sandpiper.printer.json --port COM9 --fault echo | --fault is for the practice board",
        "prove sandpiper.printer.json --port COM9 --folder fw | --folder is for the practice board",
        "watch sandpiper.printer.json --port tcp:// | it needs host:port",
      })
  void aWrongCallIsToldInOneLine(String call, String told) {
    CommandRun run = CommandRun.of(inFolder(call));
    assertThat(run.err().strip().lines()).as(call).hasSize(1);
    assertThat(run.err()).contains(told).doesNotContain("Exception", "option option", "code 4");
    assertThat(run.status()).as(call).isEqualTo(ExitStatus.USAGE);
    assertThat(run.out()).as(call).isEmpty();
  }

  /** Words that name a file of the test's folder are given with their whole path. */
  private String[] inFolder(String call) {
    return Stream.of(call.split(" "))
        .map(word -> word.equals("_") ? "" : word)
        .map(
            word ->
                !word.isEmpty() && Files.exists(folder.resolve(word))
                    ? folder.resolve(word).toString()
                    : word)
        .toArray(String[]::new);
  }

  @Test
  void aProfileThatIsThereIsNotWrittenOver() throws IOException {
    Path profile = folder.resolve("heron.printer.json");
    byte[] before = Files.readAllBytes(profile);
    CommandRun run =
        CommandRun.of("names", folder.resolve("fw").toString(), "--profile", profile.toString());
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err()).contains("is there already and would be lost");
    assertThat(Files.readAllBytes(profile)).isEqualTo(before);
  }

  @Test
  void namesWritesNothingIntoTheFirmwareFolder() {
    Path inside = folder.resolve("fw/x.names.json");
    CommandRun run =
        CommandRun.of("names", folder.resolve("fw").toString(), "--out", inside.toString());
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err()).contains("lies inside the firmware folder, which is never written to");
    assertThat(inside).doesNotExist();
  }

  @Test
  void aChangeThatStandsAlreadyIsSaid() {
    CommandRun run =
        CommandRun.of("patch", folder.resolve("fw").toString(), "--set", "LINE_RATE=115200");
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("nothing to change");
    assertThat(run.status()).isEqualTo(ExitStatus.FINE);
  }

  @Test
  void aFolderThatCannotBeMadeIsNamedAndNotTheOneBesideIt() {
    CommandRun run =
        CommandRun.of(
            "patch",
            folder.resolve("fw").toString(),
            "--set",
            "LINE_RATE=1",
            "--out",
            folder.resolve("cut.json/out").toString());
    assertThat(run.err().strip().lines()).hasSize(1);
    assertThat(run.err()).contains(folder.resolve("cut.json/out").toString() + ": ");
    assertThat(run.err()).doesNotContain(".partial", "read the folder again");
  }

  @Test
  void aProofCountsWithTheNumberOfItsNounAndGivesUnits() {
    String profile = folder.resolve("sandpiper.printer.json").toString();
    CommandRun one =
        CommandRun.of("prove", profile, "--history", "off", "--fault", "stored:x.stepsPerMm:82");
    assertThat(one.out())
        .contains("axes.x.stepsPerMm: expected 80 steps/mm, seen 82")
        .contains("not proven: 1 of 20 comparisons differs");
    CommandRun two =
        CommandRun.of(
            "prove",
            profile,
            "--history",
            "off",
            "--fault",
            "stored:x.stepsPerMm:82,stored:y.stepsPerMm:82");
    assertThat(two.out()).contains("not proven: 2 of 20 comparisons differ\n");
  }

  @Test
  void aProofWithNothingToCompareSaysThat() throws IOException {
    Path bare = folder.resolve("bare.printer.json");
    Files.writeString(bare, "{\"format\": 1, \"name\": \"Bare\"}");
    CommandRun run = CommandRun.of("prove", bare.toString(), "--history", "off");
    assertThat(run.out()).contains("no endstop and no stored setting could be compared");
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
  }

  @Test
  void aHeaterLeftColdStillAnswersWithADocument() {
    CommandRun run =
        TypedInput.typing(
            "\n",
            "heat",
            folder.resolve("sandpiper.printer.json").toString(),
            "hotend",
            "--format",
            "json");
    assertThat(run.json().path("ending").asString()).isEqualTo("left cold");
    assertThat(run.status()).isEqualTo(ExitStatus.FINE);
  }

  @Test
  void aDocumentWithoutPrintersIsNotRagged() {
    CommandRun run =
        CommandRun.of("check", folder.resolve("no.json").toString(), "--format", "json");
    assertThat(run.json().path("profiles").isEmpty()).isTrue();
    assertThat(run.out()).contains("\"profiles\" : [ ],");
  }
}
