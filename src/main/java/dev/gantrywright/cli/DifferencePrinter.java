package dev.gantrywright.cli;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.record.StateDifference;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import tools.jackson.databind.JsonNode;

/** Two states or printers side by side, value by value. */
final class DifferencePrinter {
  private final CommandSpec spec;
  private final boolean json;

  DifferencePrinter(CommandSpec spec, boolean json) {
    this.spec = spec;
    this.json = json;
  }

  /** Prints it; the exit status says whether something differs. */
  int print(String left, String right, List<StateDifference.Row> rows) {
    if (json) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("left", left);
      document.put("right", right);
      document.put("differences", rows.stream().map(DifferencePrinter::row).toList());
      Printed.json(spec, document);
    } else {
      text(left, right, rows);
    }
    return rows.isEmpty() ? ExitStatus.FINE : ExitStatus.FINDINGS;
  }

  private void text(String left, String right, List<StateDifference.Row> rows) {
    String count = rows.size() + (rows.size() == 1 ? " value differs" : " values differ");
    Printed.out(spec)
        .println(left + " and " + right + ": " + (rows.isEmpty() ? "no value differs" : count));
    int width = rows.stream().mapToInt(row -> row.path().length()).max().orElse(0);
    for (StateDifference.Row row : rows) {
      Printed.out(spec)
          .println(
              "  "
                  + row.path()
                  + " ".repeat(width - row.path().length() + 2)
                  + shown(row.left())
                  + " -> "
                  + shown(row.right())
                  + unit(row.path()));
    }
  }

  private static String shown(Optional<JsonNode> value) {
    return value.map(v -> v.isString() ? v.asString("") : v.toString()).orElse("(open)");
  }

  private static String unit(String path) {
    return Fields.at(path).map(Field::unit).map(unit -> " " + unit).orElse("");
  }

  private static Map<String, Object> row(StateDifference.Row row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("path", row.path());
    json.put("left", row.left().orElse(null));
    json.put("right", row.right().orElse(null));
    json.put("unit", Fields.at(row.path()).map(Field::unit).orElse(null));
    return json;
  }
}
