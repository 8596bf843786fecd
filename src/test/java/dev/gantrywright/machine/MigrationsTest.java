package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

class MigrationsTest {
  private final Migrations two =
      new Migrations(
          List.of(
              file -> file.put("title", file.remove("name").asString()),
              file -> file.put("steps", file.get("steps").asInt() * 2)));

  @Test
  void everyStepFromTheFilesFormatIsTakenOnce() throws Exception {
    ObjectNode file = file(1).put("name", "Heron").put("steps", 80);
    assertThat(two.toCurrent(file).toString())
        .isEqualTo("{\"format\":3,\"steps\":160,\"title\":\"Heron\"}");
  }

  @Test
  void aFileInTheMiddleSkipsTheStepsBeforeIt() throws Exception {
    ObjectNode file = file(2).put("title", "Heron").put("steps", 80);
    assertThat(two.toCurrent(file).get("steps").asInt()).isEqualTo(160);
  }

  @Test
  void aFormatThatNobodyKnowsIsRefused() {
    assertThatThrownBy(() -> two.toCurrent(file(4))).hasMessageContaining("reads up to 3");
    assertThatThrownBy(() -> two.toCurrent(file(0))).hasMessageContaining("from 1");
  }

  @Test
  void theShippedStepsEndAtTheFormatThatIsWritten() {
    assertThat(Migrations.SHIPPED.newest()).isEqualTo(ProfileFormat.CURRENT);
  }

  private static ObjectNode file(int format) {
    return JsonNodeFactory.instance.objectNode().put("format", format);
  }
}
