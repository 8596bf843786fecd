package dev.gantrywright.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.app.MainJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.TravelStudy;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.prove.TravelRuns;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sheet;
import dev.gantrywright.report.sheet.SheetHtml;
import dev.gantrywright.report.sheet.Sign;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AsBuiltTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path heron;
  private PrinterHistory history;

  @BeforeEach
  void unpack() throws Exception {
    heron = DemoWorkshop.unpack(folder.resolve("workshop"));
    history = PrinterHistory.beside(heron, "Ida Marsh", NOON);
  }

  private Sheet sheet() throws Exception {
    OpenPrinter printer = new Opening().open(heron);
    return AsBuilt.of(
        printer, Checking.shipped().check(printer), history.timeline(), DAY, "Ida Marsh");
  }

  private static Section section(Sheet sheet, String id) {
    return sheet.sections().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  private static Block.Table table(Section section, String caption) {
    return section.blocks().stream()
        .filter(Block.Table.class::isInstance)
        .map(Block.Table.class::cast)
        .filter(table -> table.caption().startsWith(caption))
        .findFirst()
        .orElseThrow();
  }

  private static Cell standing(Sheet sheet, String stage) {
    return sheet.standing().stream()
        .filter(fact -> fact.label().equals(stage))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Test
  void whatHasNotBeenDoneIsSaidPlainly() throws Exception {
    Sheet sheet = sheet();

    assertThat(sheet.open())
        .containsExactly(
            "Firmware and settings written",
            "Build and image",
            "Load",
            "Proof: endstops at rest, stored settings, identity",
            "Touch test",
            "Calibration",
            "Heat-up",
            "Who and when");
    assertThat(standing(sheet, "Build")).isEqualTo(new Cell("not done yet", Sign.OPEN));
    assertThat(table(section(sheet, "settings"), "Planned, not written").rows()).isNotEmpty();
    assertThat(standing(sheet, "Check").sign()).isEqualTo(Sign.ERROR);
  }

  @Test
  void everySettingWrittenStandsWithOldNewAndWhy() throws Exception {
    MainJob.Story story = new MainJob(Catalog.shipped()).run(heron, folder.resolve("patched"));
    history.exported(
        new Opening().open(heron), story.plan(), story.manifest(), folder.resolve("patched"));

    Sheet sheet = sheet();

    Block.Table lines = table(section(sheet, "settings"), "");
    assertThat(lines.rows()).hasSize(story.plan().lines().size());
    assertThat(lines.rows())
        .allSatisfy(
            row -> {
              assertThat(row.get(1).text()).isNotEqualTo(row.get(2).text());
              assertThat(row.get(3).text()).contains(" = ");
            })
        .anySatisfy(row -> assertThat(row.get(3).text()).isEqualTo("serial.port = 1"));
    assertThat(standing(sheet, "Write").sign()).isEqualTo(Sign.FINE);
    assertThat(sheet.open()).doesNotContain("Firmware and settings written");
  }

  @Test
  void theArmsOfADeltaPrinterStandAmongItsFacts() throws Exception {
    assertThat(facts(section(sheet(), "printer"))).doesNotContainKey("Arms, mm");
    PrinterProfile delta = ProfileStore.read(heron);
    for (String axis : List.of("x", "y", "z")) {
      delta = ProfileValues.with(delta, "axes." + axis + ".armLength", 215.5);
    }
    ProfileStore.save(delta, heron);

    assertThat(facts(section(sheet(), "printer")))
        .containsEntry("Arms, mm", "x 215.5, y 215.5, z 215.5");
  }

  private static Map<String, String> facts(Section section) {
    return section.blocks().stream()
        .filter(Block.Facts.class::isInstance)
        .flatMap(block -> ((Block.Facts) block).facts().stream())
        .collect(Collectors.toMap(Block.Fact::label, fact -> fact.value().text()));
  }

  @Test
  void aProfileChangedSinceTheExportIsToldWithItsCount() throws Exception {
    MainJob.Story story = new MainJob(Catalog.shipped()).run(heron, folder.resolve("patched"));
    history.exported(
        new Opening().open(heron), story.plan(), story.manifest(), folder.resolve("patched"));
    PrinterProfile changed =
        ProfileValues.with(ProfileStore.read(heron), "axes.x.stepsPerMm", 80.0);
    ProfileStore.save(changed, heron);

    assertThat(standing(sheet(), "Write"))
        .isEqualTo(
            new Cell(
                "2026-03-02 12:00 UTC, Ida Marsh; since then 1 value of the profile has changed",
                Sign.WARNING));
  }

  @Test
  void aPracticeBoardIsNeverTakenForTheMachine() throws Exception {
    MainJob.Story story = new MainJob(Catalog.shipped()).run(heron, folder.resolve("patched"));
    history.proved(ProfileStore.read(heron), story.after(), Set.of());

    Sheet sheet = sheet();

    assertThat(standing(sheet, "Prove").sign()).isEqualTo(Sign.WARNING);
    assertThat(standing(sheet, "Prove").text()).endsWith("; the machine itself not yet");
    assertThat(new String(SheetHtml.bytes(sheet), java.nio.charset.StandardCharsets.UTF_8))
        .contains("the practice board, which stands in for the machine: not the machine");
    assertThat(table(section(sheet, "proof"), "Stored settings").rows()).isNotEmpty();
  }

  @Test
  void aCalibrationStandsWithItsUncertainty() throws Exception {
    TravelRuns runs = new TravelRuns("y", 100, List.of(98.6), 0.02);
    history.calibrated(ProfileStore.read(heron), runs, 80, TravelStudy.of(runs, 80, 80));

    Block.Table table = table(section(sheet(), "calibration"), "Steps/mm");
    assertThat(table.rows().get(0).get(5).text()).isEqualTo("81.136 ± 0.016");
  }

  @Test
  void theSamePrinterAndDateGiveTheSameBytes() throws Exception {
    assertThat(SheetHtml.bytes(sheet())).isEqualTo(SheetHtml.bytes(sheet()));
  }

  @Test
  void theSignaturesNeverStandAloneAtTheEnd() throws Exception {
    String html = new String(SheetHtml.bytes(sheet()), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(html.indexOf("id=\"signed\""))
        .isGreaterThan(html.indexOf("id=\"calibration\""))
        .isLessThan(html.indexOf("id=\"events\""));
  }
}
