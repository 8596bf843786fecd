package dev.gantrywright.app.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.app.MainJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.TravelStudy;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.prove.PressEffect;
import dev.gantrywright.prove.Sample;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import dev.gantrywright.prove.TouchReport;
import dev.gantrywright.prove.TouchResult;
import dev.gantrywright.prove.TouchVerdict;
import dev.gantrywright.prove.Trace;
import dev.gantrywright.prove.TravelRuns;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.StateDifference;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class PrinterHistoryTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path file;
  private PrinterProfile heron;
  private PrinterHistory history;

  @BeforeEach
  void unpack() throws Exception {
    file = DemoWorkshop.unpack(folder.resolve("workshop"));
    heron = ProfileStore.read(file);
    history = PrinterHistory.beside(file, "ida", NOON);
  }

  @Test
  void anExportKeepsEveryLineWithTheReasonForIt() throws Exception {
    MainJob.Story story = new MainJob(Catalog.shipped()).run(file, folder.resolve("patched"));
    OpenPrinter printer = new Opening().open(file);

    history.exported(printer, story.plan(), story.manifest(), folder.resolve("patched"));
    history.proved(heron, story.before(), Set.of());
    history.proved(heron, story.after(), Set.of("xMin"));

    List<Event> events = history.timeline().events();
    JsonNode export = events.get(0).facts();
    assertThat(export.path("firmware").path("release").asString()).isEqualTo("rookery-2.3");
    assertThat(export.path("firmware").path("sha256").asString())
        .isEqualTo(FirmwareRelease.of(printer.folder()).sha256());
    assertThat(export.path("board").asString()).isEqualTo("Fulmar M4");
    assertThat(export.path("lines")).hasSize(story.plan().lines().size());
    JsonNode line = export.path("lines").get(0);
    assertThat(line.path("before").asString()).isNotEqualTo(line.path("after").asString());
    assertThat(line.path("path").asString()).isNotEmpty();
    JsonNode proof = events.get(1).facts();
    assertThat(proof.path("passed").asBoolean(true)).isFalse();
    assertThat(proof.path("practice").asBoolean(false)).isTrue();
    assertThat(proof.path("checks"))
        .anyMatch(check -> check.path("verdict").asString().equals("fail"));
    assertThat(events.get(2).facts().path("touched").get(0).asString()).isEqualTo("xMin");
  }

  @Test
  void aTouchTestKeepsItsMatrixAndItsTrace() throws Exception {
    Trace trace = new Trace();
    trace.add(sample(0, false));
    trace.add(sample(1_000_000_000L, true));
    trace.add(sample(1_500_000_000L, false));
    PressEffect pressed = new PressEffect(true, 2, 0, 0);
    TouchReport report =
        new TouchReport(
            List.of(new TouchResult("xMin", TouchVerdict.WORKS, "", 0, "", Optional.empty())),
            Map.of("xMin", Map.of("xMin", pressed)),
            Map.of("xMin", false));

    history.touchTested(heron, "practice:", report, Optional.of(trace));

    JsonNode facts = history.timeline().last(EventKind.TOUCH_TEST).orElseThrow().facts();
    assertThat(facts.path("passed").asBoolean(false)).isTrue();
    assertThat(facts.path("matrix").path("xMin").path("xMin").path("held").asBoolean(false))
        .isTrue();
    JsonNode strip = facts.path("trace").path("strips").get(0);
    assertThat(strip.path("initially").asBoolean(true)).isFalse();
    assertThat(strip.path("changes").toString()).isEqualTo("[1.0,1.5]");
  }

  private static Sample sample(long nanos, boolean touched) {
    return new Sample(nanos, 0, Sample.Validity.VALID, Map.of("xMin", touched));
  }

  @Test
  void aCalibrationKeepsItsRunsAndItsUncertainty() throws Exception {
    TravelRuns runs = new TravelRuns("x", 100, List.of(98.6, 98.7), 0.02);

    history.calibrated(heron, runs, 80, TravelStudy.of(runs, 80, 80));

    JsonNode facts = history.timeline().last(EventKind.CALIBRATION).orElseThrow().facts();
    assertThat(facts.path("path").asString()).isEqualTo("axes.x.stepsPerMm");
    assertThat(facts.path("measuredMm").toString()).isEqualTo("[98.6,98.7]");
    assertThat(facts.path("plusMinus").asDouble(0)).isGreaterThan(0);
  }

  private static final ThermalRun RUN =
      new ThermalRun("hotend", "POWER hotend S0.5", "POWER hotend S0", 0.5, 60, 600, 0.5);

  /** A first-order rise from 20 °C with 2 s of dead time, 20 s time constant and 100 K at half. */
  private static StepResponse rise(int seconds) {
    List<StepResponse.Point> points = new ArrayList<>();
    for (int t = 0; t <= seconds; t++) {
      points.add(new StepResponse.Point(t, 20 + 50 * (1 - Math.exp(-Math.max(0, t - 2) / 20.0))));
    }
    return new StepResponse("hotend", 0.5, points);
  }

  @Test
  void aHeatUpKeepsItsModelAndTheFileOfItsReadings() throws Exception {
    Path csv = file.resolveSibling("heron.hotend-step.csv");
    history.heatedUp(heron, "practice:", RUN, rise(120), false, csv);

    Event event = history.timeline().last(EventKind.HEAT_UP).orElseThrow();
    JsonNode facts = event.facts();
    assertThat(facts.path("practice").asBoolean(false)).isTrue();
    assertThat(facts.path("file").asString()).isEqualTo("heron.hotend-step.csv");
    assertThat(facts.path("sha256").asString()).hasSize(64);
    assertThat(facts.path("ending").asString()).isEqualTo("limit");
    assertThat(facts.path("model").path("gainKelvin").asDouble(0)).isBetween(95.0, 105.0);
    assertThat(EventWords.of(event))
        .isEqualTo(
            "practice board: hotend at 50 % of its power, 20.0 to 69.9 °C in 120.0 s, up to its"
                + " limit; readings in heron.hotend-step.csv");
  }

  @Test
  void aHeatUpThatWasEndedEarlySaysSoAndGivesNoModel() throws Exception {
    history.heatedUp(heron, "/dev/ttyACM0", RUN, rise(1), true, Path.of("heron.hotend-step.csv"));

    Event event = history.timeline().last(EventKind.HEAT_UP).orElseThrow();
    assertThat(event.facts().path("ending").asString()).isEqualTo("stopped");
    assertThat(event.facts().path("model").isMissingNode()).isTrue();
    assertThat(event.facts().path("noModel").asString()).isNotBlank();
    assertThat(EventWords.of(event)).startsWith("/dev/ttyACM0: hotend").contains("ended by hand");
  }

  @Test
  void everyLineKeepsToThePublishedSchema() throws Exception {
    anExportKeepsEveryLineWithTheReasonForIt();
    history.heatedUp(heron, "practice:", RUN, rise(60), false, Path.of("heron.hotend-step.csv"));
    history.noted(heron, "belt tightened");
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                Files.readString(Path.of("docs/schema/history-event.schema.json")),
                InputFormat.JSON);

    for (String line : Files.readAllLines(history.file().file())) {
      assertThat(schema.validate(line, InputFormat.JSON)).isEmpty();
    }
  }

  @Test
  void theWayBackKeepsWhatItLeaves() throws Exception {
    Event first = history.noted(heron, "as delivered");
    PrinterProfile edited = ProfileValues.with(heron, "axes.x.stepsPerMm", 80.0);
    ProfileStore.save(edited, file);

    WayBack.Done done = WayBack.take(file, history, first);

    assertThat(ProfileStore.read(file)).isEqualTo(heron);
    assertThat(done.changed().stream().map(StateDifference.Row::path))
        .containsExactly("axes.x.stepsPerMm");
    Timeline timeline = history.timeline();
    assertThat(timeline.events().stream().map(Event::kind))
        .containsExactly("note", "note", "return");
    Event kept = timeline.events().get(1);
    assertThat(timeline.state(kept).orElseThrow().profile()).isEqualTo(edited);

    WayBack.take(file, history, kept);
    assertThat(ProfileStore.read(file)).isEqualTo(edited);
  }

  @Test
  void aStateWhoseTextIsGoneIsOneLine() throws Exception {
    Event first = history.noted(heron, "as delivered");
    Event second = history.noted(heron, "again");
    String all = Files.readString(history.file().file());
    Files.writeString(history.file().file(), all.lines().skip(1).findFirst().orElseThrow() + "\n");

    assertThat(first.state()).isEqualTo(second.state());
    assertThatThrownBy(() -> WayBack.take(file, history, second))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("names a state whose text the file does not hold");
    assertThat(ProfileStore.read(file)).isEqualTo(heron);
  }
}
