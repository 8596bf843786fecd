package dev.gantrywright.app.sheet;

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

/** What the machine said when it was compared with the profile. */
final class ProofPart {
  private ProofPart() {}

  static Section of(Subject subject) {
    Optional<Event> last = subject.last(EventKind.PROOF);
    if (last.isEmpty()) {
      return new Section(
          "proof",
          "Proof: endstops at rest, stored settings, identity",
          List.of(
              new Block.Missing(
                  "No proof is on record.",
                  "Prove in the Prove stage, or with gantrywright prove PROFILE --port P.")));
    }
    JsonNode facts = last.get().facts();
    List<Block> blocks = new ArrayList<>();
    List<Block.Fact> rows = new ArrayList<>();
    rows.add(Texts.fact("Proven", Texts.when(last.get())));
    rows.add(port(facts));
    List<String> identity = new ArrayList<>();
    facts.path("identity").forEach(line -> identity.add(line.asString("")));
    rows.add(
        Texts.code("Firmware says", identity.isEmpty() ? "nothing" : String.join("\n", identity)));
    blocks.add(new Block.Facts(rows));
    table(facts, "endstop", "Endstops at rest", blocks);
    table(facts, "setting", "Stored settings against the profile", blocks);
    table(facts, "identity", "Identity", blocks);
    if (facts.path("explanation").isString()) {
      blocks.add(new Block.Words(facts.path("explanation").asString("")));
    }
    return new Section("proof", "Proof: endstops at rest, stored settings, identity", blocks);
  }

  /** On which line; a practice board is no machine, and the sheet says so. */
  static Block.Fact port(JsonNode facts) {
    String port = facts.path("port").asString("–");
    return facts.path("practice").asBoolean(false)
        ? Texts.fact(
            "On",
            "the practice board, which stands in for the machine: not the machine",
            Sign.WARNING)
        : Texts.code("On", port);
  }

  private static void table(JsonNode facts, String family, String caption, List<Block> blocks) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JsonNode check : facts.path("checks")) {
      if (check.path("family").asString("").equals(family)) {
        String verdict = check.path("verdict").asString("");
        rows.add(
            List.of(
                Cell.of(check.path("path").asString("")),
                Cell.of(check.path("expected").asString("")),
                Cell.of(check.path("seen").asString("")),
                new Cell(word(verdict), sign(verdict))));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              caption,
              List.of(
                  Texts.codes("Field", 5),
                  Texts.text("Expected", 4),
                  Texts.text("Seen", 4),
                  Texts.text("Verdict", 3)),
              rows));
    }
  }

  private static String word(String verdict) {
    return switch (verdict) {
      case "pass" -> "agrees";
      case "fail" -> "differs";
      case "unsure" -> "to be confirmed";
      default -> "not reported";
    };
  }

  private static Sign sign(String verdict) {
    return switch (verdict) {
      case "pass" -> Sign.FINE;
      case "fail" -> Sign.ERROR;
      case "unsure" -> Sign.WARNING;
      default -> Sign.OPEN;
    };
  }
}
