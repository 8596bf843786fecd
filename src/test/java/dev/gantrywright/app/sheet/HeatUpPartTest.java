package dev.gantrywright.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.StepRecord;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sheet;
import dev.gantrywright.report.sheet.SheetHtml;
import dev.gantrywright.report.sheet.SheetPdf;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatUpPartTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);
  private static final Path GOLDEN = Path.of("src/test/resources/app/sheet/heat-up.html");

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

  private static Section part(Sheet sheet) {
    return sheet.sections().stream()
        .filter(section -> section.id().equals("heat-up"))
        .findFirst()
        .orElseThrow();
  }

  /** A first order with dead time: 200 K at this power after a while. */
  private static StepResponse rise(String heater, double seconds, double tau) {
    List<StepResponse.Point> points = new ArrayList<>();
    for (double at = 0; at <= seconds; at += 2) {
      double rise = at <= 6 ? 0 : 200 * (1 - Math.exp(-(at - 6) / tau));
      points.add(new StepResponse.Point(at, 21 + rise));
    }
    return new StepResponse(heater, 0.4, points);
  }

  private Path heated(StepResponse response, String port, boolean stopped) throws Exception {
    ThermalRun run =
        new ThermalRun(response.heater(), "on", "off", response.powerStep(), 245, 600, 2);
    Path kept = StepRecord.keep(heron, response.heater(), response.csv());
    history.heatedUp(ProfileStore.read(heron), port, run, response, stopped, kept);
    return kept;
  }

  @Test
  void withoutAHeatUpTheSheetSaysHowToRecordOne() throws Exception {
    assertThat(part(sheet()).open()).isTrue();
    assertThat(part(sheet()).blocks())
        .singleElement()
        .isInstanceOfSatisfying(
            Block.Missing.class,
            missing -> {
              assertThat(missing.what()).isEqualTo("No heat-up is on record.");
              assertThat(missing.todo()).contains("gantrywright heat PROFILE HEATER");
            });
  }

  @Test
  void theHeaterThatWasNotHeatedIsNamed() throws Exception {
    heated(rise("hotend", 400, 60), "practice", false);
    assertThat(part(sheet()).blocks().get(0))
        .isInstanceOfSatisfying(
            Block.Missing.class,
            missing -> assertThat(missing.what()).isEqualTo("No heat-up of bed is on record."));
  }

  @Test
  void aMachineWithoutHeatersLacksNothing() throws Exception {
    PrinterProfile plain = ProfileStore.read(heron);
    for (String heater : List.of("hotend", "bed")) {
      plain = ProfileValues.with(plain, "heaters." + heater, null);
    }
    ProfileStore.save(plain, heron);
    assertThat(part(sheet()).open()).isFalse();
  }

  /** The last of each heater; one settled on the machine, one cut short on the practice board. */
  @Test
  void theLastHeatUpOfEachHeaterStandsAsInTheGoldenPage() throws Exception {
    heated(rise("hotend", 30, 60), "rfc2217://bench2.local:4000", true);
    heated(rise("hotend", 400, 60), "rfc2217://bench2.local:4000", false);
    heated(rise("bed", 120, 300), "practice:", true);
    Sheet sheet = sheet();
    String html = new String(SheetHtml.bytes(sheet), StandardCharsets.UTF_8);
    int from = html.indexOf("<section id=\"heat-up\">");
    String made = html.substring(from, html.indexOf("</section>", from)) + "</section>\n";
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(GOLDEN, made);
    }
    assertThat(made).isEqualTo(Files.readString(GOLDEN));
    assertThat(part(sheet).open()).isFalse();
    assertThat(made)
        .contains("the practice board: not the machine")
        .contains("the temperature was still rising")
        .contains("by hand, below its limit of 245 °C")
        .contains("as it was recorded");
    assertThat(html.indexOf("id=\"heat-up\"")).isLessThan(html.indexOf("id=\"signed\""));
  }

  @Test
  void thePdfSaysTheSame() throws Exception {
    heated(rise("hotend", 400, 60), "rfc2217://bench2.local:4000", false);
    try (PDDocument document = Loader.loadPDF(SheetPdf.bytes(sheet(), DAY))) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("Heated up at a set power, with nothing regulating meanwhile")
          .contains("hotend: temperature over time")
          .contains("21.0 to 220.7 °C")
          .contains("heron.hotend-step.csv");
    }
  }

  @Test
  void readingsThatAreGoneOrChangedAreNotDrawn() throws Exception {
    Path kept = heated(rise("hotend", 400, 60), "practice:", false);
    assertThat(curves()).hasSize(1);
    Files.writeString(kept, "seconds,celsius\n0,20\n1,400\n");
    assertThat(curves()).isEmpty();
    assertThat(now()).isEqualTo("changed since it was recorded");
    Files.delete(kept);
    assertThat(curves()).isEmpty();
    assertThat(now()).isEqualTo("not there any more");
  }

  /** A history is a text file that anybody may have written. */
  @ParameterizedTest
  @CsvSource({
    "../elsewhere.csv,named by no file beside the profile",
    "/dev/zero,named by no file beside the profile",
    "..,not there any more",
    "'',named by no file beside the profile"
  })
  void aHistoryThatNamesAnotherPlaceReadsNothingThere(String name, String said) throws Exception {
    heated(rise("hotend", 400, 60), "practice:", false);
    Path file = heron.resolveSibling("heron.history.jsonl");
    Files.writeString(file, Files.readString(file).replace("heron.hotend-step.csv", name));
    assertThat(curves()).isEmpty();
    assertThat(now()).isEqualTo(said);
  }

  private List<Block> curves() throws Exception {
    return part(sheet()).blocks().stream().filter(Block.Curve.class::isInstance).toList();
  }

  private String now() throws Exception {
    return part(sheet()).blocks().stream()
        .filter(Block.Facts.class::isInstance)
        .flatMap(block -> ((Block.Facts) block).facts().stream())
        .filter(fact -> fact.label().equals("The file now"))
        .findFirst()
        .orElseThrow()
        .value()
        .text();
  }
}
