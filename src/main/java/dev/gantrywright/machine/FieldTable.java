package dev.gantrywright.machine;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Reads the table of profile fields token by token: it is read at every start, and an object mapper
 * would take longer to come up than to read it.
 */
final class FieldTable {
  private final JsonParser parser;

  private FieldTable(JsonParser parser) {
    this.parser = parser;
  }

  /** The rows in the order of the file. */
  static List<Field> read(InputStream in) {
    try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), in)) {
      FieldTable table = new FieldTable(parser);
      parser.nextToken();
      List<Field> rows = new ArrayList<>();
      while (parser.nextToken() == JsonToken.START_OBJECT) {
        rows.add(table.row());
      }
      return List.copyOf(rows);
    }
  }

  private Field row() {
    Map<String, String> texts = new HashMap<>();
    Map<String, Double> limits = new HashMap<>();
    List<String> choices = new ArrayList<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.currentName();
      switch (parser.nextToken()) {
        case START_ARRAY -> {
          while (parser.nextToken() != JsonToken.END_ARRAY) {
            choices.add(parser.getString());
          }
        }
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> limits.put(key, parser.getDoubleValue());
        default -> texts.put(key, parser.getString());
      }
    }
    return new Field(
        texts.get("path"),
        texts.get("label"),
        FieldType.valueOf(texts.get("type").toUpperCase(Locale.ROOT)),
        texts.get("unit"),
        choices,
        limits.get("minimum"),
        limits.get("maximum"),
        texts.get("help"),
        texts.get("find"),
        texts.get("caution"));
  }
}
