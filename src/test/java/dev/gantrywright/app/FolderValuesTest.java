package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.patch.PatchPlan;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class FolderValuesTest {
  @Test
  void theFolderAsItCameSaysItsOwnValues() throws Exception {
    OpenPrinter heron = new Opening().open(Path.of("demo-profiles/heron.printer.json"));
    Map<String, JsonNode> values = FolderValues.of(heron.folder(), heron.names());
    assertThat(values.get("serial.baud").asInt()).isEqualTo(115200);
    assertThat(values.get("axes.z.stepsPerMm").asInt()).isEqualTo(400);
    assertThat(values.get("axes.y.homing.end").asString()).isEqualTo("min");
    assertThat(values.get("endstops.xMax.fitted").asBoolean()).isFalse();
    assertThat(values.get("endstops.xMin.pullUp").asBoolean()).isTrue();
    assertThat(values.get("kinematics").asString()).isEqualTo("cartesian");
    assertThat(values.get("board.target").asString()).isEqualTo("petrel81");
    assertThat(values.get("heaters.bed.protection").asBoolean()).isFalse();
    assertThat(values).doesNotContainKey("serial.secondPort");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "sandpiper", "guillemot"})
  void aPatchedFolderSaysWhatTheProfileSays(String name) throws Exception {
    OpenPrinter printer =
        new Opening().open(Path.of("demo-profiles").resolve(name + ".printer.json"));
    PatchPlan plan = PatchPlan.of(printer.profile(), printer.names(), printer.folder());
    assertThat(plan.refusals()).isEmpty();
    Map<String, JsonNode> values = FolderValues.of(plan.patched(), printer.names());
    printer
        .names()
        .fields()
        .keySet()
        .forEach(
            path ->
                ProfileValues.get(printer.profile(), path)
                    .ifPresent(
                        wanted ->
                            assertThat(text(values.get(path))).as(path).isEqualTo(text(wanted))));
  }

  private static String text(JsonNode value) {
    return value != null && value.isNumber()
        ? String.valueOf(value.asDouble())
        : String.valueOf(value);
  }
}
