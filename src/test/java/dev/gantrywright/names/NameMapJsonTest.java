package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class NameMapJsonTest {
  @TempDir Path dir;

  @Test
  void hasTheShapeOfTheContract() {
    NameEntry entry =
        NameEntry.plain("PULSES", 2, "config/gait.h", 12, 0.93, true, List.of("tokens pulses"))
            .others(List.of(new OtherName("STRIDE", null, "config/gait.h", 14, 0.2)));
    JsonNode json =
        JsonMapper.shared()
            .readTree(NameMapJson.text(NameMap.EMPTY.with("axes.z.stepsPerMm", entry)));
    JsonNode field = json.get("fields").get("axes.z.stepsPerMm");
    assertThat(field.propertyNames())
        .containsExactly(
            "macro",
            "element",
            "file",
            "line",
            "confidence",
            "sure",
            "meaning",
            "evidence",
            "others");
    assertThat(field.get("element").asInt()).isEqualTo(2);
    assertThat(field.get("meaning").isNull()).isTrue();
    assertThat(field.get("others").get(0).get("macro").asString()).isEqualTo("STRIDE");
    assertThat(json.get("boards").isArray()).isTrue();
    assertThat(json.get("targets").isArray()).isTrue();
  }

  @Test
  void readsBackWhatItWrote() throws NameMapException {
    NameMap map =
        NameMap.EMPTY
            .with("board.target", NameEntry.chosen("goal", null, "x.ini", 3).section("build"))
            .with("heaters.bed.watts", NameEntry.notInThisFirmware())
            .with(
                "kinematics",
                NameEntry.plain("GAIT", null, "a.h", 1, 0.9, true, List.of())
                    .meaning(null, Map.of("corexy", "GAIT_CROSSED"))
                    .switches(Map.of("delta", "GAIT_TOWERS"))
                    .unit("mA"));
    assertThat(NameMapJson.parse(NameMapJson.text(map), "x")).isEqualTo(map);
    assertThat(map.userChoices()).containsOnlyKeys("board.target", "heaters.bed.watts");
  }

  @Test
  void keepsWhatItDoesNotKnow() throws NameMapException {
    String text =
        "{\"fields\":{\"name\":{\"macro\":\"T\",\"later\":[1]}},\"firmware\":\"Rookery\"}";
    String again = NameMapJson.text(NameMapJson.parse(text, "x"));
    JsonNode json = JsonMapper.shared().readTree(again);
    assertThat(json.get("firmware").asString()).isEqualTo("Rookery");
    assertThat(json.get("fields").get("name").get("later").get(0).asInt()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"fields\": {\"name\": | line 1",
        "{\"fields\": {\"name\": {\"line\": \"twelve\"}}} | fields.name.line",
        "{\"fields\": []} | fields",
        "[1] | x.names.json",
        "null | holds no name map",
        "{} {} | line 1",
      })
  void badFilesAreOneLine(String text, String part) {
    NameMapException problem =
        catchThrowableOfType(NameMapException.class, () -> NameMapJson.parse(text, "x.names.json"));
    assertThat(problem).isNotNull();
    assertThat(problem.getMessage()).startsWith("x.names.json").contains(part).doesNotContain("\n");
  }

  @Test
  void aMissingFileIsOneLine() {
    Path file = dir.resolve("none.names.json");
    NameMapException problem =
        catchThrowableOfType(NameMapException.class, () -> NameMapJson.read(file));
    assertThat(problem.getMessage()).contains("no such file");
  }

  @Test
  void savesWholeOrNotAtAll() throws Exception {
    Path file = dir.resolve("a.names.json");
    NameMapJson.save(NameMap.EMPTY, file);
    NameMapJson.save(NameMap.EMPTY.with("name", NameEntry.chosen("T", null, "a.h", 1)), file);
    assertThat(NameMapJson.read(file).fields()).containsKey("name");
    try (var files = Files.list(dir)) {
      assertThat(files).containsExactly(file);
    }
  }
}
