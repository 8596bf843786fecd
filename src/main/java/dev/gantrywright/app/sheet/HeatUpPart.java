package dev.gantrywright.app.sheet;

import dev.gantrywright.app.ThermalStudy;
import dev.gantrywright.physics.OutOfDomain;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** The last heat-up of each heater at a set power: how it went, its model, its readings. */
final class HeatUpPart {
  private static final String TODO =
      "Record one in the Prove stage, or with gantrywright heat PROFILE HEATER --port P --on COMMAND"
          + " --off COMMAND; somebody has to stand at the machine meanwhile.";

  private HeatUpPart() {}

  static Section of(Subject subject) {
    Map<String, Event> last = new LinkedHashMap<>();
    for (Event event : subject.past().events()) {
      if (event.is(EventKind.HEAT_UP)) {
        last.put(event.facts().path("heater").asString(""), event);
      }
    }
    List<Block> blocks = new ArrayList<>();
    missing(subject, last, blocks);
    if (!last.isEmpty()) {
      blocks.add(runs(last));
      blocks.add(models(last));
      List<Block.Fact> files = new ArrayList<>();
      List<Block> curves = new ArrayList<>();
      last.forEach((heater, event) -> readings(subject, heater, event.facts(), files, curves));
      blocks.add(new Block.Facts(files));
      blocks.addAll(curves);
      blocks.add(
          new Block.Words(
              "Temperatures are those that the machine reported, not those of a second"
                  + " thermometer."));
    }
    return new Section("heat-up", "Heat-up", blocks);
  }

  /** The heaters that the profile describes and that no heat-up is kept of. */
  private static void missing(Subject subject, Map<String, Event> last, List<Block> blocks) {
    List<String> heaters = new ArrayList<>(subject.profile().heaters().keySet());
    if (heaters.isEmpty() && last.isEmpty()) {
      blocks.add(new Block.Words("The profile describes no heater."));
      return;
    }
    heaters.removeAll(last.keySet());
    if (!heaters.isEmpty()) {
      String of = last.isEmpty() ? "" : " of " + String.join(", ", heaters);
      blocks.add(new Block.Missing("No heat-up" + of + " is on record.", TODO));
    }
  }

  private static Block runs(Map<String, Event> last) {
    List<List<Cell>> rows = new ArrayList<>();
    last.forEach(
        (heater, event) -> {
          JsonNode facts = event.facts();
          rows.add(
              List.of(
                  Cell.of(heater),
                  Cell.of(Texts.when(event)),
                  port(facts),
                  Cell.of(figure("%.0f", 100 * facts.path("powerShare").asDouble(0))),
                  Cell.of(figure("%.1f", facts.path("firstCelsius").asDouble(0))),
                  Cell.of(figure("%.1f", facts.path("lastCelsius").asDouble(0))),
                  Cell.of(figure("%.1f", facts.path("seconds").asDouble(0))),
                  ending(facts)));
        });
    return new Block.Table(
        "Heated up at a set power, with nothing regulating meanwhile",
        List.of(
            Texts.text("Heater", 3),
            Texts.text("When, who", 4),
            Texts.text("On", 4),
            Texts.number("Power, %", 2),
            Texts.number("From, °C", 2),
            Texts.number("To, °C", 2),
            Texts.number("In, s", 2),
            Texts.text("Ended", 4)),
        rows);
  }

  private static Cell port(JsonNode facts) {
    return facts.path("practice").asBoolean(false)
        ? new Cell("the practice board: not the machine", Sign.WARNING)
        : Cell.of(facts.path("port").asString("–"));
  }

  private static Cell ending(JsonNode facts) {
    String limit = figure("%.0f °C", facts.path("limitCelsius").asDouble(0));
    return switch (facts.path("ending").asString("")) {
      case "limit" -> Cell.of("above its limit of " + limit);
      case "stopped" -> new Cell("by hand, below its limit of " + limit, Sign.NOTE);
      default -> Cell.of("after its time, below its limit of " + limit);
    };
  }

  private static Block models(Map<String, Event> last) {
    List<List<Cell>> rows = new ArrayList<>();
    last.forEach((heater, event) -> rows.add(model(heater, event.facts())));
    return new Block.Table(
        "The rise as a first order with dead time",
        List.of(
            Texts.text("Heater", 3),
            Texts.number("Gain, K at full power", 3),
            Texts.number("Time constant, s", 3),
            Texts.number("Dead time, s", 3),
            Texts.number("Farthest reading, K", 3),
            Texts.text("How far to trust it", 7)),
        rows);
  }

  private static List<Cell> model(String heater, JsonNode facts) {
    JsonNode model = facts.path("model");
    if (!model.isObject()) {
      Cell why = new Cell("no model: " + facts.path("noModel").asString("–"), Sign.NOTE);
      return List.of(Cell.of(heater), Cell.of("–"), Cell.of("–"), Cell.of("–"), Cell.of("–"), why);
    }
    return List.of(
        Cell.of(heater),
        Cell.of(figure("%.1f", model.path("gainKelvin").asDouble(0))),
        Cell.of(figure("%.1f", model.path("tauSeconds").asDouble(0))),
        Cell.of(figure("%.1f", model.path("deadSeconds").asDouble(0))),
        Cell.of(figure("%.1f", model.path("worstKelvin").asDouble(0))),
        facts.path("settled").asBoolean(false)
            ? new Cell("the temperature had settled", Sign.FINE)
            : new Cell("the temperature was still rising: a guess", Sign.WARNING));
  }

  private static void readings(
      Subject subject, String heater, JsonNode facts, List<Block.Fact> files, List<Block> curves) {
    HeatReadings readings = HeatReadings.of(subject.printer().file(), facts);
    files.add(Texts.code("Readings, " + heater, facts.path("file").asString("–")));
    files.add(Texts.code("SHA-256 of them", facts.path("sha256").asString("–")));
    files.add(new Block.Fact("The file now", readings.standing(), false));
    readings
        .response()
        .filter(response -> response.points().size() > 1)
        .ifPresent(response -> curves.add(curve(heater, response)));
  }

  private static Block curve(String heater, StepResponse response) {
    List<StepResponse.Point> model;
    try {
      model = ThermalStudy.of(response).fitted();
    } catch (OutOfDomain noStep) {
      model = List.of();
    }
    StepResponse.Point first = response.points().get(0);
    StepResponse.Point end = response.points().get(response.points().size() - 1);
    return new Block.Curve(
        heater
            + ": temperature over time"
            + (model.isEmpty() ? "" : "; thick as recorded, thin as the model has it"),
        String.format(
            Locale.ROOT,
            "%s from %.1f to %.1f °C in %.1f s",
            heater,
            first.celsius(),
            end.celsius(),
            end.seconds()),
        points(response.points()),
        points(model));
  }

  private static List<Block.Point> points(List<StepResponse.Point> from) {
    return from.stream().map(p -> new Block.Point(p.seconds(), p.celsius())).toList();
  }

  private static String figure(String form, double value) {
    return String.format(Locale.ROOT, form, value);
  }
}
