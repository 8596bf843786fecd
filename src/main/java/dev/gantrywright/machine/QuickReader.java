package dev.gantrywright.machine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.json.JsonFactory;

/**
 * Reads a sound profile straight from its bytes, several times as fast as by way of a tree. At the
 * first thing out of the ordinary (a wrong type, a value outside its range, an unknown key, a key
 * twice, an older format) it gives up: the careful reader then keeps it or says what is wrong.
 */
final class QuickReader {
  private static final JsonFactory FACTORY = new JsonFactory();

  private static final class GivesUp extends Exception {
    private static final long serialVersionUID = 1L;

    GivesUp() {
      super(null, null, false, false);
    }
  }

  private final JsonParser parser;

  private QuickReader(JsonParser parser) {
    this.parser = parser;
  }

  /** The profile; empty where the careful reader has to look. */
  static Optional<PrinterProfile> profile(byte[] json) {
    return read(json, Shape.PROFILE, PrinterProfile.class)
        .filter(profile -> current(profile.format()));
  }

  /** The board sheet; empty where the careful reader has to look. */
  static Optional<BoardSheet> sheet(byte[] json) {
    return read(json, Shape.SHEET, BoardSheet.class).filter(sheet -> current(sheet.format()));
  }

  private static boolean current(Integer format) {
    return format != null && format == ProfileFormat.CURRENT;
  }

  private static <T> Optional<T> read(byte[] json, Shape shape, Class<T> type) {
    try (JsonParser parser = FACTORY.createParser(json)) {
      QuickReader reader = new QuickReader(parser);
      reader.need(parser.nextToken() == JsonToken.START_OBJECT);
      T read = type.cast(reader.object(shape));
      reader.need(parser.nextToken() == null);
      return Optional.of(read);
    } catch (GivesUp | JacksonException e) {
      return Optional.empty();
    }
  }

  private void need(boolean ordinary) throws GivesUp {
    if (!ordinary) {
      throw new GivesUp();
    }
  }

  private Object object(Shape shape) throws GivesUp {
    List<Shape.Part> parts = shape.components();
    Object[] values = new Object[parts.size() + 1];
    long seen = 0;
    int next = 0;
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.currentName();
      // Files are written in the order of the record, so the next key is mostly the next component.
      if (next >= parts.size() || !parts.get(next).key().equals(key)) {
        Integer found = shape.index().get(key);
        need(found != null);
        next = found;
      }
      need((seen & 1L << next) == 0);
      seen |= 1L << next;
      values[next] = value(parts.get(next), parser.nextToken());
      next++;
    }
    need(parser.currentToken() == JsonToken.END_OBJECT);
    return shape.record(values);
  }

  private Object value(Shape.Part part, JsonToken token) throws GivesUp {
    if (token == JsonToken.VALUE_NULL) {
      return null;
    }
    return switch (part.kind()) {
      case DECIMAL -> decimal(part, token);
      case WHOLE -> whole(part, token);
      case LONG -> longer(part, token);
      case FLAG -> flag(token);
      case TEXT -> text(token);
      case WORD -> {
        Object word = part.words().get(text(token));
        need(word != null);
        yield word;
      }
      case RECORD -> {
        need(token == JsonToken.START_OBJECT);
        yield object(part.shape());
      }
      case TEXTS, RECORDS -> list(part.shape(), token);
      case TEXT_MAP, RECORD_MAP -> map(part.shape(), token);
    };
  }

  private Object decimal(Shape.Part part, JsonToken token) throws GivesUp {
    need(token == JsonToken.VALUE_NUMBER_FLOAT || token == JsonToken.VALUE_NUMBER_INT);
    double value = parser.getDoubleValue();
    need(value >= part.minimum() && value <= part.maximum());
    return value;
  }

  private Object whole(Shape.Part part, JsonToken token) throws GivesUp {
    need(
        token == JsonToken.VALUE_NUMBER_INT && parser.getNumberType() == JsonParser.NumberType.INT);
    int value = parser.getIntValue();
    need(value >= part.minimum() && value <= part.maximum());
    return value;
  }

  private Object longer(Shape.Part part, JsonToken token) throws GivesUp {
    need(token == JsonToken.VALUE_NUMBER_INT);
    need(parser.getNumberType() != JsonParser.NumberType.BIG_INTEGER);
    long value = parser.getLongValue();
    need(value >= part.minimum() && value <= part.maximum());
    return value;
  }

  private Object flag(JsonToken token) throws GivesUp {
    need(token == JsonToken.VALUE_TRUE || token == JsonToken.VALUE_FALSE);
    return token == JsonToken.VALUE_TRUE;
  }

  private String text(JsonToken token) throws GivesUp {
    need(token == JsonToken.VALUE_STRING);
    return parser.getString();
  }

  /** A list of records, or of texts where no shape is given. */
  private List<Object> list(Shape shape, JsonToken token) throws GivesUp {
    need(token == JsonToken.START_ARRAY);
    List<Object> list = new ArrayList<>();
    for (JsonToken at = parser.nextToken(); at != JsonToken.END_ARRAY; at = parser.nextToken()) {
      list.add(element(shape, at));
    }
    return list;
  }

  private Object element(Shape shape, JsonToken token) throws GivesUp {
    if (shape == null) {
      return text(token);
    }
    need(token == JsonToken.START_OBJECT);
    return object(shape);
  }

  /** A map of records, or of texts where no shape is given. */
  private Map<String, Object> map(Shape shape, JsonToken token) throws GivesUp {
    need(token == JsonToken.START_OBJECT);
    Map<String, Object> map = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.currentName();
      need(map.put(key, element(shape, parser.nextToken())) == null);
    }
    need(parser.currentToken() == JsonToken.END_OBJECT);
    return map;
  }
}
