package dev.gantrywright.machine;

import tools.jackson.core.JsonGenerator;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * How profiles and board sheets stand in a file: strict reading, one value a line, stable order.
 */
public final class ProfileFormat {
  /** The format that this version writes. */
  public static final int CURRENT = 1;

  static final JsonMapper MAPPER =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
          .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .addModule(new SimpleModule().addSerializer(new PlainNumber()))
          .build();

  private ProfileFormat() {}

  static DefaultPrettyPrinter printer() {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    Separators plain =
        PrettyPrinter.DEFAULT_SEPARATORS.withObjectNameValueSpacing(Separators.Spacing.AFTER);
    return new DefaultPrettyPrinter(plain).withObjectIndenter(lines).withArrayIndenter(lines);
  }

  /** Whether a number is written without a fraction. */
  static boolean plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15;
  }

  /** Writes 80 for 80.0, as a person would. */
  private static final class PlainNumber extends StdSerializer<Double> {
    PlainNumber() {
      super(Double.class);
    }

    @Override
    public void serialize(Double value, JsonGenerator out, SerializationContext context) {
      if (plain(value)) {
        out.writeNumber(value.longValue());
      } else {
        out.writeNumber(value);
      }
    }
  }
}
