package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapJson;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class NamesVerbTest {
  private static final String FOLDER = "src/test/resources/names/t-prefix";

  @TempDir Path dir;

  @Test
  void jsonHasTheShapeOfTheContract() {
    CommandRun run = CommandRun.of("names", FOLDER, "--format", "json");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode field = run.json().get("fields").get("axes.x.stepsPerMm");
    assertThat(field.get("macro").asString()).isEqualTo("X_TICKS_PER_MM");
    assertThat(field.get("element").isNull()).isTrue();
    assertThat(field.get("file").asString()).isEqualTo("conf/machine.h");
    assertThat(field.get("sure").asBoolean()).isTrue();
    assertThat(field.get("confidence").asDouble()).isBetween(0.75, 1.0);
    assertThat(field.get("evidence").get(0).asString()).contains("steps");
    JsonNode board = run.json().get("boards").get(0);
    assertThat(board.get("constant").asString()).isEqualTo("CB_EIDER");
    assertThat(board.get("mcu").asString()).isEqualTo("LPC1768");
  }

  @Test
  void textSaysWhatWhereAndWhy() {
    CommandRun run = CommandRun.of("names", FOLDER);
    assertThat(run.out())
        .containsPattern("axes.z.homing.end +Z_HOMES_TOWARD +sign +conf/machine.h:\\d+")
        .contains("name says")
        .contains("board CB_SMEW = 110, STM32F103RC")
        .containsPattern("\\d+ fields, \\d+ to confirm; 3 boards, 0 build targets");
  }

  @Test
  void textIsAlignedAndTheLeastSureComesFirst() {
    List<String> rows =
        CommandRun.of("names", "demo-profiles/rookery-2.3")
            .out()
            .lines()
            .filter(line -> line.matches("[ ?] *\\d+ %  .*"))
            .toList();
    assertThat(rows.get(0)).startsWith("?");
    List<Integer> percents =
        rows.stream()
            .map(line -> Integer.valueOf(line.replaceAll("^\\?? *(\\d+) %.*", "$1")))
            .toList();
    assertThat(percents).isSorted();
    int macro = rows.get(0).indexOf(rows.get(0).split(" +")[4]);
    assertThat(rows).allMatch(line -> line.charAt(macro - 1) == ' ' && line.charAt(macro) != ' ');
  }

  /** The fastest start: what was just read from a folder is nowhere at odds with it. */
  @Test
  void aProfileAndMapFromAnyFolderCheckCleanAgainstIt() {
    for (String style : new File("src/test/resources/names").list()) {
      Path profile = dir.resolve(style + ".printer.json");
      Path names = dir.resolve(style + ".names.json");
      String folder = "src/test/resources/names/" + style;
      CommandRun.of("names", folder, "--profile", profile.toString(), "--out", names.toString());
      JsonNode found =
          CommandRun.of("check", profile.toString(), "--folder", folder, "--format", "json").json();
      assertThat(found.get("profiles")).as(style).hasSize(1);
      assertThat(folderErrors(found)).as(style).isEmpty();
    }
  }

  private static List<String> folderErrors(JsonNode node) {
    List<String> errors = new ArrayList<>();
    if (node.isObject() && node.has("level") && node.get("level").asString().equals("error")) {
      if (node.get("family").asString().equals("folder")) {
        errors.add(node.toString());
      }
    }
    node.forEach(child -> errors.addAll(folderErrors(child)));
    return errors;
  }

  @Test
  void savesTheMapAndKeepsWhatTheUserSet() throws Exception {
    Path file = dir.resolve("x.names.json");
    CommandRun.of("names", FOLDER, "--out", file.toString());
    NameMap map =
        NameMapJson.read(file)
            .with("axes.x.maxSpeed", NameEntry.chosen("X_JUMP_SPEED", null, "conf/machine.h", 1))
            .with("heaters.bed.watts", NameEntry.notInThisFirmware());
    NameMapJson.save(map, file);
    CommandRun.of("names", FOLDER, "--out", file.toString());
    NameMap again = NameMapJson.read(file);
    assertThat(again.entry("axes.x.maxSpeed").orElseThrow().macro()).isEqualTo("X_JUMP_SPEED");
    assertThat(again.entry("axes.x.maxSpeed").orElseThrow().line()).isGreaterThan(1);
    assertThat(again.entry("heaters.bed.watts").orElseThrow().macro()).isNull();
    assertThat(again.entry("axes.y.maxSpeed").orElseThrow().macro()).isEqualTo("Y_TOP_SPEED");
  }

  @Test
  void writesAProfileWithEveryValueOfTheFolder() throws Exception {
    Path file = dir.resolve("heron.printer.json");
    CommandRun run = CommandRun.of("names", FOLDER, "--profile", file.toString());
    assertThat(run.status()).isZero();
    PrinterProfile profile = ProfileStore.read(file);
    assertThat(profile.name()).isEqualTo("Workshop Heron");
    assertThat(profile.board().constant()).isEqualTo("CB_EIDER");
    assertThat(profile.board().mcu()).isEqualTo("LPC1768");
    assertThat(profile.axes().get("x").stepsPerMm()).isEqualTo(160);
    assertThat(profile.axes().get("x").travelMin()).isEqualTo(-5);
    assertThat(profile.axes().get("x").homing().end().word()).isEqualTo("min");
    assertThat(profile.axes().get("z").driver().ic()).isEqualTo("A4988");
    assertThat(profile.axes().get("e").driver().current()).isEqualTo(0.55);
    assertThat(profile.endstops().get("zMin").inverted()).isTrue();
    assertThat(profile.endstops().get("xMax").fitted()).isFalse();
    assertThat(profile.heaters().get("bed").maximum()).isEqualTo(120);
    assertThat(profile.supply().volts()).isEqualTo(24);
    assertThat(run.err()).contains("serial.secondPort: left open");
  }

  @Test
  void aProfileReadFromAFolderMakesNoEditInIt() throws Exception {
    for (String style :
        new String[] {"t-prefix", "t-suffix", "t-camel", "t-lists", "t-matrix", "t-lathe"}) {
      Path profile = dir.resolve(style + ".printer.json");
      Path names = dir.resolve(style + ".names.json");
      String folder = "src/test/resources/names/" + style;
      CommandRun.of("names", folder, "--profile", profile.toString(), "--out", names.toString());
      CommandRun run = CommandRun.of("patch", folder, "--profile", profile.toString());
      assertThat(run.out()).as(style).isEmpty();
      assertThat(run.status()).isZero();
    }
  }

  @Test
  void badInputIsOneLine() throws Exception {
    Path map = Files.writeString(dir.resolve("bad.names.json"), "{");
    Path empty = Files.createDirectories(dir.resolve("empty"));
    for (String[] args :
        new String[][] {
          {"names", dir.resolve("none").toString()},
          {"names", empty.toString()},
          {"names", FOLDER, "--keep", map.toString()},
          {"names", FOLDER, "--format", "yaml"},
        }) {
      CommandRun run = CommandRun.of(args);
      assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
      assertThat(run.err().lines()).hasSize(1);
    }
    CommandRun run =
        CommandRun.of("names", FOLDER, "--out", dir.resolve("no/such/x.json").toString());
    assertThat(run.status()).isEqualTo(ExitStatus.DEVICE);
    assertThat(run.err().lines()).hasSize(1);
  }
}
