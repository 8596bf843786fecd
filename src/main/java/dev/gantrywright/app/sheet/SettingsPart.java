package dev.gantrywright.app.sheet;

import dev.gantrywright.app.record.FirmwareRelease;
import dev.gantrywright.patch.PlannedLine;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sign;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The firmware folder, and every setting that was written into its copy. */
final class SettingsPart {
  private SettingsPart() {}

  static Section of(Subject subject) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Fact> facts = new ArrayList<>();
    Optional<Event> export = subject.last(EventKind.EXPORT);
    if (subject.printer().folder() == null) {
      blocks.add(
          new Block.Missing(
              "The firmware folder is not there.", "Name it in the profile under build.folder."));
    } else {
      FirmwareRelease now = FirmwareRelease.of(subject.printer().folder());
      facts.add(Texts.fact("Release", now.name()));
      facts.add(
          Texts.code("SHA-256 of its " + now.files() + " header and settings files", now.sha256()));
      facts.add(Texts.code("Name map", subject.value("build.names")));
    }
    export.ifPresent(event -> written(event, facts));
    if (!facts.isEmpty()) {
      blocks.add(new Block.Facts(facts));
    }
    if (export.isPresent()) {
      lines(export.get().facts(), blocks);
    } else {
      planned(subject, blocks);
    }
    return new Section("settings", "Firmware and settings written", blocks);
  }

  private static void written(Event event, List<Block.Fact> facts) {
    JsonNode export = event.facts();
    facts.add(Texts.fact("Patched folder written", Texts.when(event)));
    facts.add(Texts.fact("from release", export.path("firmware").path("release").asString("–")));
    facts.add(Texts.code("to", export.path("patched").asString("–")));
    for (JsonNode file : export.path("changed")) {
      facts.add(Texts.code(file.path("path").asString(""), file.path("after").asString("")));
    }
  }

  private static void lines(JsonNode export, List<Block> blocks) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JsonNode line : export.path("lines")) {
      rows.add(
          row(
              line.path("file").asString("") + ":" + line.path("line").asInt(0),
              line.path("before").asString(""),
              line.path("after").asString(""),
              line.path("path").asString(""),
              line.path("value").asString("")));
    }
    if (rows.isEmpty()) {
      blocks.add(new Block.Words("No line had to change: the folder gave every value already."));
    } else {
      blocks.add(table(Texts.count(rows.size(), "line") + " written", rows));
    }
    refused(export, blocks);
  }

  private static void refused(JsonNode export, List<Block> blocks) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JsonNode refusal : export.path("refused")) {
      rows.add(
          List.of(
              new Cell(refusal.path("path").asString(""), Sign.WARNING),
              Cell.of(refusal.path("value").asString("")),
              Cell.of(refusal.path("reason").asString(""))));
    }
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Values not written",
              List.of(Texts.codes("Field", 3), Texts.codes("Value", 2), Texts.text("Why not", 5)),
              rows));
    }
  }

  private static void planned(Subject subject, List<Block> blocks) {
    blocks.add(
        new Block.Missing(
            "No patched folder is on record.",
            "Write it in the Write stage, or with gantrywright patch … --out DIR."));
    if (subject.plan() == null || subject.plan().lines().isEmpty()) {
      return;
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (PlannedLine line : subject.plan().lines()) {
      rows.add(
          row(
              line.file() + ":" + line.line(),
              line.before(),
              line.after(),
              line.path(),
              line.value()));
    }
    blocks.add(table("Planned, not written: " + Texts.count(rows.size(), "line"), rows));
  }

  private static Block.Table table(String caption, List<List<Cell>> rows) {
    return new Block.Table(
        caption,
        List.of(
            Texts.codes("File and line", 3),
            Texts.codes("Old", 5),
            Texts.codes("New", 5),
            Texts.text("Why", 4)),
        rows);
  }

  private static List<Cell> row(
      String place, String before, String after, String path, String value) {
    return List.of(
        Cell.of(place),
        Cell.of(close(before)),
        Cell.of(close(after)),
        Cell.of(path.isEmpty() ? value : path + " = " + value));
  }

  /** Runs of blanks hold columns in a file; on the sheet they only take room. */
  private static String close(String line) {
    return line.strip().replaceAll("[ \\t]{2,}", " ");
  }
}
