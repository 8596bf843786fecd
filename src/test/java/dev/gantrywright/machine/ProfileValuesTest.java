package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProfileValuesTest {
  private PrinterProfile heron;

  @BeforeEach
  void open() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
  }

  @Test
  void aValueIsFoundByItsPath() {
    assertThat(ProfileValues.get(heron, "axes.x.drive.teeth").orElseThrow().asInt()).isEqualTo(20);
    assertThat(ProfileValues.get(heron, "axes.u.drive.teeth")).isEmpty();
  }

  @Test
  void oneValueChangesAndNothingElse() throws Exception {
    PrinterProfile changed = ProfileValues.with(heron, "axes.x.stepsPerMm", 80);
    assertThat(changed.axes().get("x").stepsPerMm()).isEqualTo(80.0);
    assertThat(ProfileValues.with(changed, "axes.x.stepsPerMm", 160)).isEqualTo(heron);
  }

  @Test
  void aSectionThatIsNotThereIsMade() throws Exception {
    PrinterProfile changed = ProfileValues.with(heron, "axes.z.motor.ohms", 2.8);
    assertThat(changed.axes().get("z").motor().ohms()).isEqualTo(2.8);
  }

  @Test
  void nullTakesAValueAway() throws Exception {
    PrinterProfile changed = ProfileValues.with(heron, "axes.y.homing.end", null);
    assertThat(changed.axes().get("y").homing().end()).isNull();
  }

  @Test
  void aWrongValueIsRefusedWithItsReason() {
    assertThatThrownBy(() -> ProfileValues.with(heron, "axes.x.stepsPerMm", -1))
        .hasMessageContaining("axes.x.stepsPerMm: found -1 steps/mm; give at least 0.001");
    assertThatThrownBy(() -> ProfileValues.with(heron, "kinematics", "rope"))
        .hasMessageContaining("cartesian, corexy, delta");
    assertThatThrownBy(() -> ProfileValues.with(heron, "serial.baud", "fast"))
        .hasMessageContaining("whole number");
  }

  @Test
  void everyValueOfADemoPrinterHasAFieldWithHelp() {
    List<String> leaves = leaves("", ProfileValues.tree(heron)).toList();
    assertThat(leaves).isNotEmpty().allSatisfy(path -> assertThat(Fields.at(path)).isPresent());
    assertThat(Fields.all()).allSatisfy(f -> assertThat(f.help()).isNotBlank());
  }

  @Test
  void pathsNameEachAxisEndAndHeater() {
    Set<String> paths = ProfileValues.paths(heron).stream().collect(Collectors.toSet());
    assertThat(paths)
        .contains("axes.e.drive.gearDiameter", "endstops.yMax.fitted", "heaters.bed.watts")
        .noneMatch(p -> p.contains("*"));
  }

  @Test
  void aFieldDescribesOnlyItsOwnPaths() {
    Field field = Fields.at("axes.x.stepsPerMm").orElseThrow();
    assertThat(field.describes("axes.q.stepsPerMm")).isTrue();
    assertThat(field.describes("axes.stepsPerMm")).isFalse();
    assertThat(field.describes("axes.x.drive.stepsPerMm")).isFalse();
    assertThat(field.at("y")).isEqualTo("axes.y.stepsPerMm");
  }

  private static java.util.stream.Stream<String> leaves(
      String prefix, tools.jackson.databind.JsonNode node) {
    return node.properties().stream()
        .flatMap(
            e -> {
              String path = prefix.isEmpty() ? e.getKey() : prefix + "." + e.getKey();
              return e.getValue().isObject()
                  ? leaves(path, e.getValue())
                  : java.util.stream.Stream.of(path);
            });
  }
}
