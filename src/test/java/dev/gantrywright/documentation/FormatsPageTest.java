package dev.gantrywright.documentation;

import static dev.gantrywright.documentation.GeneratedPage.cell;
import static dev.gantrywright.documentation.GeneratedPage.code;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Makes {@code docs/formats.md} from the published schemas and the table of fields. */
class FormatsPageTest {
  private static final String HEAD =
      """
      # The file formats

      <!-- Made from docs/schema and machine/fields.json by FormatsPageTest; do not edit. -->

      All files are JSON in UTF-8, made to be read, compared and kept under version control. Keys that Gantrywright does not know are kept when it saves. A value is spoken of by its path, as `axes.x.stepsPerMm`; below, `*` stands for a name of your own (an axis, an endstop, a heater) and `[]` for each element of a list. A field that is not given is not known: rules are silent about it and nothing is written for it.

      | file | holds |
      | --- | --- |
      | `NAME.printer.json` | [one printer](#printer-profile) |
      | `NAME.board.json` | [one controller board](#board-sheet), shared by printers |
      | `NAME.names.json` | [the name map](#name-map) of one firmware folder |
      | `NAME.history.jsonl` | [what was done with a printer](#history), one event a line |

      The JSON Schemas (2020-12) are in [schema/](schema/).

      """;

  private static final String NAME_MAP =
      """
      How it is learned, corrected and kept: [how names are learned](names.md).
      """;

  private final Map<String, JsonNode> fields = new HashMap<>();

  @Test
  void thePageIsThatOfTheSchemas() throws Exception {
    JsonNode rows =
        JsonMapper.shared()
            .readTree(
                Files.readString(
                    Path.of("src/main/resources/dev/gantrywright/machine/fields.json")));
    rows.valueStream().forEach(row -> fields.put(row.path("path").asString(), row));
    StringBuilder page = new StringBuilder(HEAD);
    table(page, "Printer profile", "printer-profile");
    fields.clear();
    table(page, "Board sheet", "board-sheet");
    table(page, "Name map", "name-map");
    page.append(NAME_MAP).append('\n');
    table(page, "History", "history-event");
    GeneratedPage.hold(Path.of("docs/formats.md"), page.toString().strip() + "\n");
  }

  /** What neither the schema nor the table of fields says. */
  private void furtherMeanings(String file) throws IOException {
    try (var in = getClass().getResourceAsStream("meanings.json")) {
      JsonMapper.shared()
          .readTree(in)
          .path(file)
          .properties()
          .forEach(
              row ->
                  fields.put(
                      row.getKey(),
                      JsonMapper.shared()
                          .createObjectNode()
                          .put("unit", row.getValue().path(0).asString())
                          .put("help", row.getValue().path(1).asString())));
    }
  }

  private void table(StringBuilder page, String title, String file) throws IOException {
    JsonNode schema =
        JsonMapper.shared()
            .readTree(Files.readString(Path.of("docs/schema", file + ".schema.json")));
    furtherMeanings(file);
    page.append("## ").append(title).append("\n\n");
    page.append("| path | type | unit | range | meaning |\n| --- | --- | --- | --- | --- |\n");
    walk(page, "", schema);
    page.append('\n');
  }

  private void walk(StringBuilder page, String path, JsonNode node) {
    JsonNode properties = node.path("properties");
    JsonNode others = node.path("additionalProperties");
    JsonNode items = node.path("items");
    boolean inner = properties.size() > 0 || others.isObject() || items.has("properties");
    if (!inner) {
      row(page, path, node);
      return;
    }
    String dot = path.isEmpty() ? "" : path + ".";
    properties.properties().forEach(p -> walk(page, dot + p.getKey(), p.getValue()));
    if (others.isObject()) {
      // A map of plain values is told by its own description.
      boolean plain = !others.has("properties") && !others.has("additionalProperties");
      if (plain && node.has("description") && !others.has("description")) {
        ObjectNode told = (ObjectNode) others;
        told.set("description", node.path("description"));
      }
      walk(page, dot + "*", others);
    }
    if (items.has("properties")) {
      walk(page, path + "[]", items);
    }
  }

  private void row(StringBuilder page, String path, JsonNode node) {
    JsonNode field = fields.getOrDefault(path, node);
    String told = node.path("description").asString("").replaceFirst(" Unit: [^.]*\\.$", "");
    String meaning = told.isEmpty() ? field.path("help").asString("") : told;
    assertThat(meaning).as("meaning of %s", path).isNotEmpty();
    String find = field.path("find").asString("");
    String caution = field.path("caution").asString("");
    page.append("| ")
        .append(code(path))
        .append(" | ")
        .append(type(node))
        .append(" | ")
        .append(cell(unit(node, field)))
        .append(" | ")
        .append(range(node))
        .append(" | ")
        .append(cell(meaning))
        .append(find.isEmpty() ? "" : " How to find it: " + cell(find))
        .append(caution.isEmpty() ? "" : " **CAUTION.** " + cell(caution))
        .append(" |\n");
  }

  private static String unit(JsonNode node, JsonNode field) {
    String unit = field.path("unit").asString("");
    var told =
        java.util.regex.Pattern.compile(" Unit: ([^.]*)\\.$")
            .matcher(node.path("description").asString(""));
    return unit.isEmpty() && told.find() ? told.group(1) : unit;
  }

  private static String type(JsonNode node) {
    if (node.has("enum")) {
      return node.path("enum")
          .valueStream()
          .map(v -> code(v.asString()))
          .collect(Collectors.joining(", "));
    }
    if (node.has("const")) {
      return code(node.path("const").asString());
    }
    String type = single(node.path("type"));
    return switch (type) {
      case "array" ->
          "list of " + single(node.path("items").path("type")).replace("string", "text");
      case "string" -> "text";
      case "boolean" -> "`true`, `false`";
      default -> type;
    };
  }

  /** The type, where null stands beside it for what is left out. */
  private static String single(JsonNode type) {
    return type.isArray()
        ? type.valueStream()
            .map(JsonNode::asString)
            .filter(each -> !each.equals("null"))
            .collect(Collectors.joining(" or "))
        : type.asString("any");
  }

  private static String range(JsonNode node) {
    String low = bound(node, "minimum", "exclusiveMinimum", "above ");
    String high = bound(node, "maximum", "exclusiveMaximum", "below ");
    if (low.isEmpty() && high.isEmpty()) {
      return "";
    }
    return low.isEmpty() ? "to " + high : high.isEmpty() ? "from " + low : low + " to " + high;
  }

  private static String bound(JsonNode node, String with, String without, String word) {
    return node.has(with)
        ? node.path(with).asString()
        : node.has(without) ? word + node.path(without).asString() : "";
  }
}
