package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

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
  void aValueReadByItsPathIsTheOneOfTheTree() throws Exception {
    for (PrinterProfile printer : demoPrinters()) {
      ObjectNode tree = ProfileValues.tree(printer);
      for (String path : pathsAndSections(printer)) {
        assertThat(ProfileValues.get(printer, path))
            .as(path)
            .isEqualTo(ProfileValues.get(tree, path));
      }
    }
  }

  @Test
  void aValueReplacedInItsRecordIsTheOneReadFromTheTree() throws Exception {
    int replaced = 0;
    for (PrinterProfile printer : demoPrinters()) {
      for (String path : ProfileValues.paths(printer)) {
        Field field = Fields.at(path).orElseThrow();
        for (JsonNode value : values(field)) {
          PrinterProfile quick = PathWalk.with(printer, path, value);
          if (quick != null) {
            replaced++;
            assertThat(quick).as(path).isEqualTo(ProfileValues.bound(printer, path, value));
            assertThat(ProfileStore.bytes(quick))
                .as(path)
                .isEqualTo(ProfileStore.bytes(ProfileValues.bound(printer, path, value)));
          }
        }
      }
    }
    assertThat(replaced).isGreaterThan(100);
  }

  @Test
  void whatAnEditLeavesIsNotCopied() throws Exception {
    PrinterProfile changed = ProfileValues.with(heron, "axes.x.stepsPerMm", 81);
    assertThat(changed.axes().get("y")).isSameAs(heron.axes().get("y"));
    assertThat(changed.heaters().get("bed")).isSameAs(heron.heaters().get("bed"));
  }

  private static List<PrinterProfile> demoPrinters() throws Exception {
    List<PrinterProfile> printers = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("demo-profiles"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".printer.json")).toList()) {
        printers.add(ProfileStore.read(file));
      }
    }
    assertThat(printers).isNotEmpty();
    return printers;
  }

  private static Set<String> pathsAndSections(PrinterProfile printer) {
    Set<String> paths = new TreeSet<>(ProfileValues.paths(printer));
    for (String path : List.copyOf(paths)) {
      for (int dot = path.indexOf('.'); dot > 0; dot = path.indexOf('.', dot + 1)) {
        paths.add(path.substring(0, dot));
      }
      paths.add(path + ".more");
      paths.add(path + "Not");
    }
    return paths;
  }

  /** Values of every kind, those that the field takes among them. */
  private static List<JsonNode> values(Field field) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    List<JsonNode> values =
        new ArrayList<>(
            List.of(
                make.numberNode(3),
                make.numberNode(3.5),
                make.booleanNode(true),
                make.stringNode("a word")));
    field.choices().forEach(choice -> values.add(make.stringNode(choice)));
    return values;
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
