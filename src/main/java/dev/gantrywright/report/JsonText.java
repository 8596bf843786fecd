package dev.gantrywright.report;

import java.io.StringWriter;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON as people read it, also in pieces of one document. */
final class JsonText {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .defaultPrettyPrinter(
              new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
          .build();

  private JsonText() {}

  /** The value, every line but the first indented by so many levels. */
  static String of(Object value, int levels) {
    return MAPPER.writeValueAsString(value).replace("\n", "\n" + "  ".repeat(levels));
  }

  /**
   * The text of a document up to and behind the elements of one of its arrays.
   *
   * @param before writes all that stands before the elements, the array's start last
   * @param after writes all that follows, the array's end first
   */
  static Frame around(Consumer<JsonGenerator> before, Consumer<JsonGenerator> after) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = MAPPER.createGenerator(text)) {
      before.accept(out);
      out.flush();
      int cut = text.getBuffer().length();
      after.accept(out);
      out.flush();
      return new Frame(text.toString().substring(0, cut), text.toString().substring(cut));
    }
  }

  /** What stands around the elements of an array. */
  record Frame(String head, String tail) {}
}
