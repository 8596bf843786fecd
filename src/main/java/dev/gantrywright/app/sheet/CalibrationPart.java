package dev.gantrywright.app.sheet;

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

/** The last calibration of each axis, with its uncertainty. */
final class CalibrationPart {
  private CalibrationPart() {}

  static Section of(Subject subject) {
    Map<String, Event> last = new LinkedHashMap<>();
    for (Event event : subject.past().events()) {
      if (event.is(EventKind.CALIBRATION)) {
        last.put(event.facts().path("path").asString(""), event);
      }
    }
    if (last.isEmpty()) {
      return new Section(
          "calibration",
          "Calibration",
          List.of(
              new Block.Missing(
                  "No calibration is on record.",
                  "Measure a travel in the Prove stage, or with gantrywright compute calibrate …"
                      + " --for PROFILE --axis AXIS.")));
    }
    List<List<Cell>> rows = new ArrayList<>();
    last.forEach((path, event) -> rows.add(row(subject, path, event)));
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Table(
            "Steps/mm from measured travels; ± is one standard uncertainty (JCGM 100, GUM)",
            List.of(
                Texts.codes("Field", 5),
                Texts.text("When, who", 4),
                Texts.number("Commanded, mm", 3),
                Texts.number("Measured, mm", 4),
                Texts.number("In force then", 2),
                Texts.number("Found", 4),
                Texts.text("Profile now", 3)),
            rows));
    last.values()
        .forEach(
            event ->
                event
                    .facts()
                    .path("warnings")
                    .forEach(
                        warning ->
                            blocks.add(
                                new Block.Words(
                                    event.facts().path("path").asString("")
                                        + ": "
                                        + warning.asString("")
                                        + "."))));
    return new Section("calibration", "Calibration", blocks);
  }

  private static List<Cell> row(Subject subject, String path, Event event) {
    JsonNode facts = event.facts();
    List<String> measured = new ArrayList<>();
    facts
        .path("measuredMm")
        .forEach(mm -> measured.add(String.format(Locale.ROOT, "%.2f", mm.asDouble(0))));
    double found = facts.path("stepsPerMm").asDouble(0);
    double plusMinus = facts.path("plusMinus").asDouble(0);
    return List.of(
        Cell.of(path),
        Cell.of(Texts.when(event)),
        Cell.of(facts.path("commandedMm").toString()),
        Cell.of(String.join(", ", measured)),
        Cell.of(facts.path("current").toString()),
        Cell.of(String.format(Locale.ROOT, "%.3f ± %.3f", found, plusMinus)),
        now(subject.value(path), found, plusMinus));
  }

  private static Cell now(String value, double found, double plusMinus) {
    try {
      boolean near = Math.abs(Double.parseDouble(value) - found) <= 2 * plusMinus;
      return new Cell(value, near ? Sign.FINE : Sign.NOTE);
    } catch (NumberFormatException open) {
      return new Cell(value, Sign.OPEN);
    }
  }
}
