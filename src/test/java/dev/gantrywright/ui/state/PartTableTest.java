package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PartTableTest {
  private PrinterProfile heron;
  private List<Part> parts;

  @BeforeEach
  void open() throws Exception {
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
    parts = PartTable.shipped().parts(heron);
  }

  @Test
  void everyFieldOfTheProfileCanBeEditedInExactlyOnePart() {
    List<String> rows =
        parts.stream()
            .flatMap(part -> part.groups().stream())
            .flatMap(group -> group.rows().stream())
            .map(Part.Row::path)
            .toList();
    assertThat(rows).doesNotHaveDuplicates();
    assertThat(rows)
        .containsAll(
            ProfileValues.paths(heron).stream().filter(path -> !path.equals("format")).toList());
  }

  @Test
  void partsAreNamedAsTheBenchNamesThem() {
    assertThat(parts)
        .extracting(Part::title)
        .containsSequence("Printer", "Board", "Serial", "X axis", "Y axis", "Z axis", "Extruder")
        .containsSequence("x min", "x max", "y min", "y max", "z min", "z max")
        .contains("Hot end", "Bed", "Build", "Queries");
  }

  @Test
  void findsThePartOfAPath() {
    PartTable table = PartTable.shipped();
    assertThat(table.partOf(heron, "axes.x.stepsPerMm")).map(Part::id).contains("axes.x");
    assertThat(table.partOf(heron, "supply.volts")).map(Part::id).contains("printer");
    assertThat(table.partOf(heron, "endstops.zMin")).isEmpty();
    assertThat(table.partOf(heron, "config/nest.h:12")).isEmpty();
  }

  @Test
  void aRowKnowsWhenItApplies() {
    Part x = parts.stream().filter(part -> part.id().equals("axes.x")).findFirst().orElseThrow();
    assertThat(x.groups().get(0).rows())
        .contains(new Part.Row("axes.x.drive.lead", "axes.x.drive.kind", "screw"));
  }

  @Test
  void fieldsAreNamedWithTheirPlace() {
    assertThat(PlaceNames.field("axes.x.stepsPerMm")).isEqualTo("X steps/mm");
    assertThat(PlaceNames.field("endstops.zMin.inverted")).isEqualTo("z min inverted");
    assertThat(PlaceNames.field("heaters.bed.watts")).isEqualTo("Bed power");
    assertThat(PlaceNames.field("serial.baud")).isEqualTo("Baud rate");
    assertThat(PlaceNames.field("src/a.h:3")).isEqualTo("src/a.h:3");
  }
}
