package dev.gantrywright.app.sheet;

import dev.gantrywright.report.FindingsText;
import dev.gantrywright.report.ProfileFindings;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sign;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import java.util.ArrayList;
import java.util.List;

/** What the rule book finds in the profile as it stands, and what was set aside. */
final class FindingsPart {
  private FindingsPart() {}

  static Section of(Subject subject) {
    ProfileFindings found = subject.findings();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Words(sentence(found)));
    found.problems().forEach(problem -> blocks.add(new Block.Missing("Not checked:", problem)));
    if (!found.open().isEmpty()) {
      blocks.add(
          new Block.Table(
              "Findings",
              List.of(
                  Texts.text("Level", 3),
                  Texts.codes("Id", 3),
                  Texts.text("Place", 4),
                  Texts.text("What was found", 9)),
              found.open().stream().sorted(Finding.WORST_FIRST).map(FindingsPart::row).toList()));
    }
    waived(found, blocks);
    return new Section("findings", "Findings and waivers", blocks);
  }

  private static String sentence(ProfileFindings found) {
    String counts = FindingsText.counts(found);
    return "The profile as it stands, by the rule book: " + counts + ".";
  }

  private static List<Cell> row(Finding finding) {
    return List.of(
        new Cell(finding.level().word(), sign(finding.level())),
        Cell.of(finding.id()),
        Cell.of(finding.where()),
        Cell.of(finding.summary() + "; " + finding.evidence() + "."));
  }

  static Sign sign(Level level) {
    return switch (level) {
      case ERROR -> Sign.ERROR;
      case WARNING -> Sign.WARNING;
      case NOTE -> Sign.NOTE;
    };
  }

  private static void waived(ProfileFindings found, List<Block> blocks) {
    List<List<Cell>> rows = new ArrayList<>();
    found
        .sorted()
        .waived()
        .forEach(
            (finding, waiver) ->
                rows.add(
                    List.of(
                        new Cell(finding.level().word(), sign(finding.level())),
                        Cell.of(finding.id()),
                        Cell.of(finding.where() + ": " + finding.evidence()),
                        Cell.of(
                            waiver.reason()
                                + (waiver.date() == null ? "" : " (" + waiver.date() + ")")))));
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Set aside with a reason",
              List.of(
                  Texts.text("Level", 3),
                  Texts.codes("Id", 3),
                  Texts.text("Finding", 7),
                  Texts.text("Reason", 6)),
              rows));
    }
  }
}
