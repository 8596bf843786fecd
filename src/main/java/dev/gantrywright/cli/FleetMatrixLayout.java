package dev.gantrywright.cli;

import dev.gantrywright.app.fleet.FleetMatrix;
import dev.gantrywright.rules.Level;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Printers against findings: a row a printer, a column a rule, a letter the worst level there. */
final class FleetMatrixLayout {
  private static final int NAME = 24;

  /** Columns that stand side by side on a terminal of a hundred. */
  private static final int BLOCK = 24;

  private FleetMatrixLayout() {}

  static List<String> text(FleetMatrix matrix) {
    List<String> lines = new ArrayList<>();
    List<FleetMatrix.Touched> rules = matrix.rules();
    for (int from = 0; from < rules.size(); from += BLOCK) {
      block(lines, matrix, rules.subList(from, Math.min(rules.size(), from + BLOCK)));
    }
    if (rules.isEmpty()) {
      lines.add("nothing found in " + Counted.of(matrix.rows().size(), "printer"));
      return lines;
    }
    lines.add("E error, W warning, N note; the worst of each rule");
    for (FleetMatrix.Touched rule : rules) {
      lines.add(
          "  "
              + rule.id()
              + "  "
              + letter(rule.worst())
              + "  "
              + rule.printers()
              + " of "
              + matrix.rows().size()
              + "  "
              + rule.slug());
    }
    return lines;
  }

  private static void block(
      List<String> lines, FleetMatrix matrix, List<FleetMatrix.Touched> rules) {
    List<String> heads =
        rules.stream().map(rule -> rule.id().substring(rule.id().indexOf('-') + 1)).toList();
    int height = heads.stream().mapToInt(String::length).max().orElse(0);
    for (int row = 0; row < height; row++) {
      StringBuilder line = new StringBuilder(" ".repeat(NAME + 1));
      for (String head : heads) {
        line.append(' ').append(row < head.length() ? head.charAt(row) : ' ').append(' ');
      }
      lines.add(line.toString().stripTrailing());
    }
    for (FleetMatrix.Row row : matrix.rows()) {
      StringBuilder line = new StringBuilder(name(row)).append(' ');
      for (FleetMatrix.Touched rule : rules) {
        Level level = row.found().get(rule.id());
        line.append(' ').append(level == null ? "·" : letter(level)).append(' ');
      }
      lines.add(
          row.problem().isEmpty() ? line.toString().stripTrailing() : name(row) + "  not read");
    }
    lines.add("");
  }

  private static String name(FleetMatrix.Row row) {
    String name = row.printer().isEmpty() ? row.file() : row.printer();
    return name.length() > NAME
        ? name.substring(0, NAME - 1) + "…"
        : name + " ".repeat(NAME - name.length());
  }

  private static String letter(Level level) {
    return level.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT);
  }

  static Map<String, Object> json(FleetMatrix matrix) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("printers", matrix.rows().stream().map(FleetMatrixLayout::row).toList());
    document.put("rules", matrix.rules().stream().map(FleetMatrixLayout::rule).toList());
    return document;
  }

  private static Map<String, Object> row(FleetMatrix.Row row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", row.file());
    json.put("printer", row.printer());
    Map<String, Object> found = new LinkedHashMap<>();
    row.found().forEach((id, level) -> found.put(id, level.word()));
    json.put("found", found);
    json.put("waived", row.waived());
    json.put("problem", row.problem().isEmpty() ? null : row.problem());
    return json;
  }

  private static Map<String, Object> rule(FleetMatrix.Touched rule) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", rule.id());
    json.put("slug", rule.slug());
    json.put("worst", rule.worst().word());
    json.put("printers", rule.printers());
    return json;
  }
}
