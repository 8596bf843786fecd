package dev.gantrywright.catalog;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * JSON as maps, lists, texts, {@code Long}, {@code Double} and {@code Boolean}. The data files are
 * read at every start; binding them by way of an object mapper would cost more than all of them.
 */
final class PlainJson {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private PlainJson() {}

  /** The object that a stream holds. */
  static Map<String, Object> object(InputStream in) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), in)) {
      return object(parser, parser.nextToken());
    }
  }

  /** The object in a text. */
  static Map<String, Object> object(String json) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
      return object(parser, parser.nextToken());
    }
  }

  private static Map<String, Object> object(JsonParser parser, JsonToken start) {
    if (start != JsonToken.START_OBJECT) {
      throw new IllegalStateException("a data file holds one JSON object, this one " + start);
    }
    Map<String, Object> object = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.currentName();
      object.put(key, value(parser, parser.nextToken()));
    }
    return object;
  }

  private static List<Object> array(JsonParser parser) {
    List<Object> array = new ArrayList<>();
    for (JsonToken at = parser.nextToken(); at != JsonToken.END_ARRAY; at = parser.nextToken()) {
      array.add(value(parser, at));
    }
    return array;
  }

  private static Object value(JsonParser parser, JsonToken token) {
    return switch (token) {
      case START_OBJECT -> object(parser, token);
      case START_ARRAY -> array(parser);
      case VALUE_NUMBER_INT -> parser.getLongValue();
      case VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> parser.getString();
    };
  }
}
