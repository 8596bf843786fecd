package dev.gantrywright.image;

import java.util.Optional;
import java.util.OptionalLong;
import tools.jackson.databind.JsonNode;

/** The registered UF2 family numbers, from {@code uf2-families.json}. */
final class Uf2Families {
  private static final JsonNode ROWS = FactTable.open("uf2-families.json").get("families");

  private Uf2Families() {}

  /** The family's registered short name. */
  static Optional<String> name(long id) {
    for (JsonNode row : ROWS) {
      if (number(row) == id) {
        return Optional.of(row.get("name").asString());
      }
    }
    return Optional.empty();
  }

  /** The number registered under a name. */
  static OptionalLong number(String name) {
    for (JsonNode row : ROWS) {
      if (row.get("name").asString().equalsIgnoreCase(name)) {
        return OptionalLong.of(number(row));
      }
    }
    return OptionalLong.empty();
  }

  private static long number(JsonNode row) {
    return Long.decode(row.get("id").asString());
  }
}
