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

/** The build, its image, and how that came onto the board. */
final class BuildPart {
  private BuildPart() {}

  static Section build(Subject subject) {
    Optional<Event> last = subject.last(EventKind.BUILD);
    if (last.isEmpty()) {
      return new Section(
          "build",
          "Build and image",
          List.of(
              new Block.Missing(
                  "No build is on record.",
                  "Build in the Build stage, or with gantrywright build PROFILE.")));
    }
    JsonNode facts = last.get().facts();
    List<Block.Fact> rows = new ArrayList<>();
    rows.add(Texts.fact("Built", Texts.when(last.get())));
    rows.add(
        Texts.fact(
            "Outcome",
            facts.path("outcome").asString("–")
                + ", "
                + Texts.count(facts.path("errors").asLong(0), "error")
                + ", "
                + Texts.count(facts.path("warnings").asLong(0), "warning")
                + String.format(Locale.ROOT, ", %.1f s", facts.path("millis").asLong(0) / 1000.0),
            facts.path("outcome").asString("").equals("built") ? Sign.FINE : Sign.ERROR));
    rows.add(Texts.code("Command", facts.path("command").asString("–")));
    if (facts.path("problem").isString()) {
      rows.add(Texts.fact("Problem", facts.path("problem").asString(""), Sign.ERROR));
    }
    JsonNode image = facts.path("image");
    if (image.isObject()) {
      image(facts, image, rows);
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Facts(rows));
    remarks(image, blocks);
    return new Section("build", "Build and image", blocks);
  }

  private static void image(JsonNode facts, JsonNode image, List<Block.Fact> rows) {
    rows.add(Texts.code("Image", facts.path("file").asString("–")));
    rows.add(Texts.code("SHA-256 of the image", image.path("sha256").asString("–")));
    rows.add(
        Texts.fact(
            "Format and size",
            image.path("format").asString("–")
                + ", "
                + Texts.bytes(image.path("fileBytes").asLong(0))));
    String flash = Texts.bytes(image.path("flashBytes").asLong(0));
    rows.add(
        Texts.fact(
            "In flash",
            image.path("start").isNumber()
                ? flash + String.format(Locale.ROOT, " from 0x%08X", image.path("start").asLong(0))
                : flash));
    if (image.path("ramBytes").isNumber()) {
      rows.add(Texts.fact("In RAM", Texts.bytes(image.path("ramBytes").asLong(0))));
    }
    boolean good = facts.path("good").asBoolean(false);
    rows.add(
        Texts.fact(
            "Judged",
            good ? "nothing speaks against loading it" : "not fit to load",
            good ? Sign.FINE : Sign.ERROR));
  }

  private static void remarks(JsonNode image, List<Block> blocks) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JsonNode remark : image.path("remarks")) {
      String level = remark.path("level").asString("");
      rows.add(
          List.of(
              new Cell(level, sign(level)),
              Cell.of(
                  remark.path("text").asString("") + " " + remark.path("evidence").asString(""))));
    }
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "What was seen in the image",
              List.of(Texts.text("Level", 1), Texts.text("Remark", 6)),
              rows));
    }
  }

  private static Sign sign(String level) {
    return switch (level) {
      case "error" -> Sign.ERROR;
      case "warning" -> Sign.WARNING;
      default -> Sign.NOTE;
    };
  }

  static Section load(Subject subject) {
    Optional<Event> last = subject.last(EventKind.LOAD);
    if (last.isEmpty()) {
      return new Section(
          "load",
          "Load",
          List.of(
              new Block.Missing(
                  "No load is on record.",
                  "Load in the Load stage, or with gantrywright load FILE --to DIR --for"
                      + " PROFILE.")));
    }
    JsonNode facts = last.get().facts();
    List<Block.Fact> rows = new ArrayList<>();
    rows.add(Texts.fact("Loaded", Texts.when(last.get())));
    rows.add(Texts.code("By " + facts.path("way").asString("–"), facts.path("to").asString("–")));
    rows.add(Texts.code("SHA-256 of the image", facts.path("sha256").asString("–")));
    boolean back = facts.path("readBack").asBoolean(false);
    rows.add(
        Texts.fact(
            "Read back",
            back ? "yes, and equal" : "no: this way of loading cannot be read back",
            back ? Sign.FINE : Sign.NOTE));
    subject
        .goodBuild()
        .ifPresent(
            build -> {
              boolean same =
                  build.facts().path("image").path("sha256").equals(facts.path("sha256"));
              rows.add(
                  Texts.fact(
                      "Against the build",
                      same
                          ? "the image of the last good build"
                          : "another image than the last good build",
                      same ? Sign.FINE : Sign.WARNING));
            });
    if (facts.path("because").isString()) {
      rows.add(Texts.fact("Overridden, because", facts.path("because").asString(""), Sign.WARNING));
    }
    return new Section("load", "Load", List.of(new Block.Facts(rows)));
  }
}
