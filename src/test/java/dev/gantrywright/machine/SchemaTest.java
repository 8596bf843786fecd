package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.gantrywright.names.NameMapJson;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Run with {@code -Dgolden.update=true} to write the schemas anew after a change of format. */
class SchemaTest {
  private static final Path DOCS = Path.of("docs/schema");

  @ParameterizedTest
  @CsvSource({
    "printer-profile.schema.json, dev.gantrywright.machine.PrinterProfile, Printer profile",
    "board-sheet.schema.json, dev.gantrywright.machine.BoardSheet, Board sheet",
    "name-map.schema.json, dev.gantrywright.names.NameMap, Name map"
  })
  void thePublishedSchemaIsThatOfTheRecords(String file, Class<? extends Record> type, String title)
      throws Exception {
    byte[] made = SchemaGenerator.of(type, title);
    Path golden = DOCS.resolve(file);
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(DOCS);
      Files.write(golden, made);
    }
    assertThat(new String(made, StandardCharsets.UTF_8)).isEqualTo(Files.readString(golden));
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "sandpiper", "guillemot"})
  void demoPrintersKeepToTheSchema(String name) throws Exception {
    String json = Files.readString(DemoFilesTest.DEMO.resolve(name + ".printer.json"));
    assertThat(schema("printer-profile").validate(json, InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"fulmar-m4", "petrel-81"})
  void demoBoardsKeepToTheSchema(String name) throws Exception {
    String json = Files.readString(DemoFilesTest.DEMO.resolve(name + ".board.json"));
    assertThat(schema("board-sheet").validate(json, InputFormat.JSON)).isEmpty();
  }

  /** What the program writes, an older map without the newer keys, and one with a key to come. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"fields\": {\"name\": {\"macro\": \"T\", \"file\": \"a.h\", \"line\": 1}}}",
        "{\"fields\": {\"name\": {\"macro\": null, \"by\": \"user\", \"sure\": true}}}",
        "{\"fields\": {\"name\": {\"macro\": \"T\", \"confirmed\": true, \"later\": 1}}}"
      })
  void nameMapsKeepToTheSchemaAndAreRead(String json) throws Exception {
    assertThat(schema("name-map").validate(json, InputFormat.JSON)).isEmpty();
    String written = NameMapJson.text(NameMapJson.parse(json, "x"));
    assertThat(schema("name-map").validate(written, InputFormat.JSON)).isEmpty();
    String demo = Files.readString(DemoFilesTest.DEMO.resolve("rookery-2.3.names.json"));
    assertThat(schema("name-map").validate(demo, InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"format\": 1, \"serial\": {\"baud\": \"fast\"}}",
        "{\"format\": 1, \"serial\": {\"baud\": 12}}",
        "{\"format\": 1, \"axes\": {\"x\": {\"drive\": {\"kind\": \"rope\"}}}}",
        "{\"format\": 1, \"endstops\": {\"xMin\": {\"contact\": \"no\"}}}"
      })
  void theSchemaRefusesWhatTheReaderRefuses(String json) throws Exception {
    assertThat(schema("printer-profile").validate(json, InputFormat.JSON)).isNotEmpty();
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> ProfileStore.parse("x", json.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(ProfileProblem.class);
  }

  private static Schema schema(String name) throws Exception {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(DOCS.resolve(name + ".schema.json")), InputFormat.JSON);
  }
}
