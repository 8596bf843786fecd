package dev.gantrywright.app.sheet;

import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sign;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The touch test: verdicts, who answered to whom, and the picture of the states meanwhile. */
final class TouchPart {
  private TouchPart() {}

  static Section of(Subject subject) {
    Optional<Event> last = subject.last(EventKind.TOUCH_TEST);
    if (last.isEmpty()) {
      return new Section(
          "touch-test",
          "Touch test",
          List.of(
              new Block.Missing(
                  "No touch test is on record.",
                  "Run it in the Prove stage, or with gantrywright prove PROFILE --port P"
                      + " --touch.")));
    }
    JsonNode facts = last.get().facts();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Facts(
            List.of(Texts.fact("Tested", Texts.when(last.get())), ProofPart.port(facts))));
    verdicts(facts, blocks);
    matrix(facts, blocks);
    if (facts.path("trace").isObject()) {
      blocks.add(strips(facts.path("trace")));
    }
    return new Section("touch-test", "Touch test", blocks);
  }

  private static void verdicts(JsonNode facts, List<Block> blocks) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JsonNode result : facts.path("results")) {
      boolean works = result.path("verdict").asString("").equals("works");
      boolean tested = !result.path("verdict").asString("").equals("not-tested");
      String other = result.path("other").asString("");
      rows.add(
          List.of(
              Cell.of(result.path("end").asString("")),
              new Cell(
                  result.path("phrase").asString("") + (other.isEmpty() ? "" : " (" + other + ")"),
                  works ? Sign.FINE : tested ? Sign.ERROR : Sign.OPEN),
              Cell.of(
                  String.format(Locale.ROOT, "%.1f", result.path("longestBounceMs").asDouble(0))),
              Cell.of(result.path("advice").asString(""))));
    }
    blocks.add(
        new Block.Table(
            "Each endstop, pressed by hand",
            List.of(
                Texts.text("Endstop", 3),
                Texts.text("Verdict", 5),
                Texts.number("Bounce, ms", 2),
                Texts.text("Advice", 7)),
            rows));
  }

  /** A row for each pressed endstop, a column for each that might have answered. */
  private static void matrix(JsonNode facts, List<Block> blocks) {
    List<String> ends = new ArrayList<>();
    facts.path("results").forEach(result -> ends.add(result.path("end").asString("")));
    JsonNode matrix = facts.path("matrix");
    if (matrix.isEmpty()) {
      return;
    }
    List<Block.Column> columns = new ArrayList<>();
    columns.add(Texts.text("Pressed", 3));
    ends.forEach(end -> columns.add(Texts.text(end, 2)));
    List<List<Cell>> rows = new ArrayList<>();
    for (String pressed : ends) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.of(pressed));
      for (String seen : ends) {
        row.add(cell(matrix.path(pressed).path(seen), pressed.equals(seen)));
      }
      rows.add(row);
    }
    blocks.add(new Block.Table("Which endstop answered to which press", columns, rows));
  }

  private static Cell cell(JsonNode effect, boolean own) {
    if (effect.isMissingNode()) {
      return Cell.of("–");
    }
    if (effect.path("held").asBoolean(false)) {
      return new Cell("yes", own ? Sign.FINE : Sign.ERROR);
    }
    if (effect.path("noisy").asBoolean(false)) {
      return new Cell("noise", Sign.WARNING);
    }
    return own ? new Cell("no change", Sign.ERROR) : Cell.of("no change");
  }

  private static Block.Strips strips(JsonNode trace) {
    double seconds = trace.path("seconds").asDouble(0);
    List<Block.Strip> strips = new ArrayList<>();
    for (JsonNode strip : trace.path("strips")) {
      List<Block.Span> triggered = new ArrayList<>();
      boolean now = strip.path("initially").asBoolean(false);
      double since = 0;
      for (JsonNode change : strip.path("changes")) {
        double at = change.asDouble(0);
        if (now) {
          triggered.add(new Block.Span(since, at));
        }
        now = !now;
        since = at;
      }
      if (now) {
        triggered.add(new Block.Span(since, seconds));
      }
      strips.add(new Block.Strip(strip.path("end").asString(""), triggered, words(triggered)));
    }
    return new Block.Strips(seconds, strips);
  }

  private static String words(List<Block.Span> triggered) {
    if (triggered.isEmpty()) {
      return "never triggered";
    }
    double first = triggered.get(0).from();
    return "triggered "
        + Texts.count(triggered.size(), "time")
        + String.format(Locale.ROOT, ", first at %.1f s", first);
  }
}
