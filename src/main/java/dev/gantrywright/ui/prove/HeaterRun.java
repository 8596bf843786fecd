package dev.gantrywright.ui.prove;

import dev.gantrywright.app.HeatCeiling;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/**
 * Records a step response on an armed line. The cautions stand above the fields; without arming the
 * run cannot be begun, and whatever ends it switches the heater off.
 */
final class HeaterRun extends VBox {
  /** Receives the readings so far and the limit. */
  interface Growing extends BiConsumer<List<StepResponse.Point>, Double> {}

  /** Receives a run and the file that keeps its readings. */
  interface Recorded extends BiConsumer<StepResponse, Path> {}

  private static final double EVERY_SECONDS = 0.5;

  /** Kept below the highest temperature that the profile allows; our margin. */
  private static final double MARGIN = 15;

  private final PrinterDesk desk;
  private final Growing growing;
  private final Recorded recorded;
  private final TextField heater = new TextField();
  private final TextField power = new TextField("0.5");
  private final TextField limit = new TextField();
  private final TextField seconds = new TextField("600");
  private final TextField on = new TextField();
  private final TextField off = new TextField();
  private final Button arm;
  private final Button begin;
  private final Button end;
  private final Label standing = Pieces.paragraph("", "strong");
  private HeaterJob job;
  private String line = "";
  private String derivedOn = "";
  private String derivedOff = "";
  private String refusal = "";

  HeaterRun(PrinterDesk desk, Growing growing, Recorded recorded) {
    super(8);
    this.desk = desk;
    this.growing = growing;
    this.recorded = recorded;
    arm = Pieces.button("heater-arm", Texts.of("line.arm"), "act-second", this::arm);
    begin = Pieces.button("heater-begin", Texts.of("heater.begin"), "act", this::begin);
    end = Pieces.button("heater-end", Texts.of("heater.end"), "act", this::end);
    standing.setId("heater-standing");
    desk.profile().heaters().keySet().stream().findFirst().ifPresent(heater::setText);
    limit.setText(allowed());
    for (TextField each : List.of(heater, power)) {
      each.textProperty().addListener((o, before, now) -> derive());
    }
    for (TextField each : List.of(limit, seconds, on, off)) {
      each.textProperty().addListener((o, before, now) -> standing());
    }
    getChildren()
        .addAll(
            Section.caution("prove.warning", "heater.caution"),
            Section.fields(
                Section.field(heater, "heater-name", "heater.name", 7),
                Section.field(power, "heater-run-power", "heater.power", 4),
                Section.field(limit, "heater-limit", "heater.limit", 5),
                Section.field(seconds, "heater-seconds", "heater.longest", 5)),
            Section.fields(
                Section.field(on, "heater-on", "heater.on", 16),
                Section.field(off, "heater-off", "heater.off", 16)),
            Pieces.row(12, arm, begin, end),
            standing);
    derive();
  }

  private Heater described() {
    return desk.profile().heaters().get(heater.getText().strip());
  }

  private String allowed() {
    Heater found = described();
    boolean known = found != null && found.maximum() != null;
    return known
        ? String.format(Locale.ROOT, "%.0f", Math.max(30, ceiling().celsius() - MARGIN))
        : "80";
  }

  private HeatCeiling ceiling() {
    return HeatCeiling.of(described());
  }

  /** Says what the limit may be where the one asked for is hotter; empty where it is not. */
  private String tooHot() {
    Double highest = number(limit);
    HeatCeiling ceiling = ceiling();
    return highest == null || highest <= ceiling.celsius()
        ? ""
        : Texts.of(
            "heater.tooHot",
            limit.getText().strip(),
            heater.getText().strip(),
            String.format(Locale.ROOT, "%.0f", Math.floor(ceiling.celsius())),
            ceiling.why());
  }

  /** The practice board's own commands; a real firmware's are its user's to give. */
  private void derive() {
    if (desk.link().status().get().practice()) {
      String nextOn = "POWER " + heater.getText().strip() + " S" + power.getText().strip();
      String nextOff = "POWER " + heater.getText().strip() + " S0";
      if (on.getText().equals(derivedOn)) {
        on.setText(nextOn);
      }
      if (off.getText().equals(derivedOff)) {
        off.setText(nextOff);
      }
      derivedOn = nextOn;
      derivedOff = nextOff;
    }
    standing();
  }

  /** The line came, went, or was armed. */
  void standing() {
    boolean practice = desk.link().status().get().practice();
    if (practice && on.getText().isEmpty() && derivedOn.isEmpty()) {
      derive();
      return;
    }
    boolean up = desk.link().status().get().kind() == LinkStatus.Kind.UP;
    boolean armed = desk.link().armed().get();
    boolean running = job != null;
    arm.setText(Texts.of(armed ? "line.disarm" : "line.arm"));
    arm.setDisable(!up || running);
    begin.setDisable(!up || !armed || running || asked() == null);
    end.setVisible(running);
    end.setManaged(running);
    List.of(heater, power, limit, seconds, on, off).forEach(field -> field.setDisable(running));
    String refused = running ? "" : tooHot();
    if (!running && (standing.getText().isEmpty() || standing.getText().equals(refusal))) {
      standing.setText(Texts.of("heater.first"));
    }
    if (!refused.isEmpty()) {
      standing.setText(refused);
    }
    refusal = refused;
  }

  private void arm() {
    desk.link().arm(!desk.link().armed().get());
  }

  /** What is to be run; null where a field cannot be read. */
  private ThermalRun asked() {
    Double share = number(power);
    Double highest = number(limit);
    Double longest = number(seconds);
    boolean whole =
        share != null
            && share > 0
            && share <= 1
            && highest != null
            && tooHot().isEmpty()
            && longest != null
            && longest > 0
            && !heater.getText().isBlank()
            && !on.getText().isBlank()
            && !off.getText().isBlank();
    return whole
        ? new ThermalRun(
            heater.getText().strip(),
            on.getText().strip(),
            off.getText().strip(),
            share,
            highest,
            longest,
            EVERY_SECONDS)
        : null;
  }

  private static Double number(TextField field) {
    try {
      Double value = Double.valueOf(field.getText().strip().replace(',', '.'));
      return Double.isFinite(value) ? value : null;
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private void begin() {
    ThermalRun asked = asked();
    LineSession session = desk.link().session().orElse(null);
    if (asked == null || session == null || job != null) {
      return;
    }
    standing.setText(Texts.of("heater.running", "0", "–", limit.getText()));
    line = desk.link().status().get().line();
    job =
        new HeaterJob(
            asked,
            session,
            desk.printer().file(),
            points -> reading(points, asked.highestCelsius()),
            this::ended);
    desk.link().beforeClosing(job::endAndWait);
    job.start();
    standing();
  }

  private void reading(List<StepResponse.Point> points, double highest) {
    StepResponse.Point last = points.get(points.size() - 1);
    standing.setText(
        Texts.of(
            "heater.running",
            String.format(Locale.ROOT, "%.0f", last.seconds()),
            String.format(Locale.ROOT, "%.1f", last.celsius()),
            limit.getText()));
    growing.accept(points, highest);
  }

  private void end() {
    if (job != null) {
      standing.setText(Texts.of("heater.ending"));
      job.end();
    }
  }

  /** On the window's thread. */
  private void ended(HeaterJob.Outcome outcome) {
    job = null;
    desk.link().beforeClosing(() -> {});
    // What was to be run has been run: nothing else shall go by on the same permission.
    desk.link().arm(false);
    if (outcome.response() == null) {
      standing.setText(Texts.of("heater.broken", outcome.trouble()));
    } else {
      double last =
          outcome.response().points().get(outcome.response().points().size() - 1).celsius();
      boolean over = last > outcome.run().highestCelsius();
      standing.setText(
          Texts.of(over ? "heater.over" : "heater.done", outcome.kept().getFileName())
              + (outcome.trouble().isEmpty() ? "" : " " + outcome.trouble()));
      recorded.accept(outcome.response(), outcome.kept());
      if (outcome.trouble().isEmpty()) {
        keep(outcome);
      }
    }
    standing();
  }

  /** The run stands in the printer's record, with the file that keeps its readings. */
  private void keep(HeaterJob.Outcome outcome) {
    Path file = desk.printer().file();
    PrinterProfile profile = desk.profile();
    String port = line;
    Kept.in(
        desk,
        () ->
            PrinterHistory.beside(file)
                .heatedUp(
                    profile,
                    port,
                    outcome.run(),
                    outcome.response(),
                    outcome.stopped(),
                    outcome.kept()));
  }
}
