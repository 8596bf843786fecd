package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProfileStoreTest {
  @TempDir Path folder;

  @Test
  void aFileCutOffNamesLineAndColumn() {
    ProfileProblem problem = problem("{\n  \"format\": 1,\n  \"serial\": {\n    \"baud\": ");
    assertThat(problem.line()).isEqualTo(4);
    assertThat(problem.getMessage()).startsWith("heron, line 4, column ").doesNotContain("\n");
  }

  @Test
  void aWrongTypeNamesTheKeyAndWhatIsWanted() {
    ProfileProblem problem =
        problem("{\n  \"format\": 1,\n  \"serial\": {\n    \"baud\": \"fast\"\n  }\n}");
    assertThat(problem.getMessage())
        .isEqualTo(
            "heron, line 4, column 13, serial.baud: found \"fast\";"
                + " give a whole number in bit/s");
  }

  @Test
  void aFractionIsNoWholeNumber() {
    assertThat(problem("{\"format\": 1, \"serial\": {\"baud\": 9600.5}}").getMessage())
        .contains("serial.baud", "whole number");
  }

  @Test
  void aNumberInQuotesIsNoNumber() {
    assertThat(problem("{\"format\": 1, \"axes\": {\"x\": {\"maxSpeed\": \"200\"}}}").getMessage())
        .contains("axes.x.maxSpeed", "found \"200\"", "give a number in mm/s");
  }

  @Test
  void aWrongWordListsTheRightOnes() {
    assertThat(
            problem("{\"format\": 1, \"endstops\": {\"xMin\": {\"contact\": \"open\"}}}")
                .getMessage())
        .contains("endstops.xMin.contact", "\"open\"", "NO, NC");
  }

  @Test
  void aValueOutOfRangeNamesTheLimit() {
    ProfileProblem problem =
        problem("{\n\"format\": 1,\n\"axes\": {\"x\": {\n\"driver\": {\"microsteps\": 1024}}}}");
    assertThat(problem.getMessage())
        .isEqualTo(
            "heron, line 4, column 26, axes.x.driver.microsteps: found 1024; give at most 256");
  }

  @Test
  void aKeyGivenTwiceIsRefused() {
    assertThat(problem("{\"format\": 1, \"name\": \"a\", \"name\": \"b\"}").getMessage())
        .contains("Duplicate", "name");
  }

  @Test
  void aListIsNoProfile() {
    assertThat(problem("[]").getMessage()).contains("starts with {");
  }

  @Test
  void aNewerFormatSaysSo() {
    assertThat(problem("{\n\"format\": 99}").getMessage())
        .isEqualTo(
            "heron, line 2, column 11, format: the file has format 99, this version reads up to 1;"
                + " open it with a newer version");
  }

  @Test
  void aMissingFormatSaysSo() {
    assertThat(problem("{}").getMessage()).contains("\"format\" is missing");
  }

  @Test
  void aMissingFileAFolderAndAGiantAreOneLineEach() throws Exception {
    assertThat(read(folder.resolve("none.json"))).endsWith("none.json: no such file");
    assertThat(read(folder)).endsWith("is a folder; give the file in it");
    Path giant = folder.resolve("giant.json");
    Files.write(giant, new byte[JsonStore.LARGEST_BYTES + 1]);
    assertThat(read(giant)).contains("larger than 4 MiB");
  }

  @Test
  void unknownKeysStayAtEveryLevel() throws Exception {
    String json =
        "{\"format\": 1, \"colour\": \"blue\", \"serial\": {\"port\": 1, \"cable\": {\"mm\": 300}},"
            + " \"axes\": {\"x\": {\"belt\": \"new\", \"drive\": {\"maker\": null, \"kind\": \"belt\"}}}}";
    PrinterProfile profile = ProfileStore.parse("x", json.getBytes(StandardCharsets.UTF_8));
    PrinterProfile edited = ProfileValues.with(profile, "serial.baud", 115200);
    String saved = new String(ProfileStore.bytes(edited), StandardCharsets.UTF_8);
    assertThat(saved).contains("\"colour\": \"blue\"", "\"mm\": 300", "\"belt\": \"new\"");
    assertThat(saved).contains("\"baud\": 115200");
  }

  @Test
  void savingKeepsTheVersionBefore() throws Exception {
    Path file = folder.resolve("heron.printer.json");
    PrinterProfile first = ProfileStore.read(DemoFilesTest.DEMO.resolve("heron.printer.json"));
    ProfileStore.save(first, file);
    byte[] before = Files.readAllBytes(file);
    PrinterProfile second = ProfileValues.with(first, "name", "Heron II");
    ProfileStore.save(second, file);

    assertThat(ProfileStore.read(file)).isEqualTo(second);
    assertThat(folder.resolve("heron.printer.json.previous")).hasBinaryContent(before);
    assertThat(folder.toFile().list()).hasSize(2);
  }

  @Test
  void aSaveThatFailsLeavesTheFileAsItWas() throws Exception {
    Path file = folder.resolve("gone").resolve("heron.printer.json");
    PrinterProfile profile = ProfileStore.read(DemoFilesTest.DEMO.resolve("heron.printer.json"));
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> ProfileStore.save(profile, file))
        .isInstanceOf(java.io.IOException.class);
    assertThat(folder.toFile().list()).isEmpty();
  }

  private static ProfileProblem problem(String json) {
    return catchThrowableOfType(
        ProfileProblem.class,
        () -> ProfileStore.parse("heron", json.getBytes(StandardCharsets.UTF_8)));
  }

  private static String read(Path file) {
    return catchThrowableOfType(ProfileProblem.class, () -> ProfileStore.read(file)).getMessage();
  }
}
