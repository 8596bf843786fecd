package dev.gantrywright.link;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Reads the standard dialect, and lays a profile's own words over it. */
public final class DialectFile {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

  private DialectFile() {}

  /** The dialect that ships with the program. */
  public static Dialect standard() {
    return MAPPER.treeToValue(standardTree(), Dialect.class);
  }

  /**
   * The standard dialect with some entries replaced.
   *
   * @param replacements entry name to text, number, truth value, list or map
   * @throws IllegalArgumentException with one clear line when an entry has the wrong type or range
   */
  public static Dialect with(Map<String, ?> replacements) {
    return with(MAPPER.writeValueAsString(replacements));
  }

  /**
   * The standard dialect with the entries of a JSON object laid over it; entries that it does not
   * know are left alone.
   *
   * @throws IllegalArgumentException with one clear line when an entry has the wrong type or range
   */
  public static Dialect with(String json) {
    ObjectNode tree = standardTree();
    try {
      JsonNode over = MAPPER.readTree(json);
      for (String name : over.propertyNames()) {
        JsonNode value = over.get(name);
        JsonNode before = tree.get(name);
        if (before == null || value.isNull()) {
          continue;
        }
        if (before.getNodeType() != value.getNodeType()) {
          throw new IllegalArgumentException(
              "link."
                  + name
                  + " is "
                  + value
                  + "; it must be a "
                  + before.getNodeType().name().toLowerCase(java.util.Locale.ROOT));
        }
        tree.set(name, value);
      }
      return MAPPER.treeToValue(tree, Dialect.class);
    } catch (JacksonException e) {
      Throwable cause = e.getCause();
      throw new IllegalArgumentException(
          cause instanceof IllegalArgumentException
              ? cause.getMessage()
              : "link: " + e.getOriginalMessage(),
          e);
    }
  }

  private static ObjectNode standardTree() {
    try (InputStream in = DialectFile.class.getResourceAsStream("dialect.json")) {
      return (ObjectNode) MAPPER.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
