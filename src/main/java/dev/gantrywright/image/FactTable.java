package dev.gantrywright.image;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Opens a data file that stands beside the classes. */
final class FactTable {
  private FactTable() {}

  static JsonNode open(String name) {
    try (InputStream in = FactTable.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the data file " + name + " is missing");
      }
      return JsonMapper.shared().readTree(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
