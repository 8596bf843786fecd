package dev.gantrywright.image;

import java.util.Locale;
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

  /** The number for a part: the longest registered name that the part number starts with. */
  static OptionalLong forPart(String part) {
    String p = part.toUpperCase(Locale.ROOT);
    String best = "";
    long found = -1;
    for (JsonNode row : ROWS) {
      for (JsonNode prefix : row.get("parts")) {
        String name = prefix.asString();
        if (p.startsWith(name) && name.length() > best.length()) {
          best = name;
          found = number(row);
        }
      }
    }
    return found < 0 ? OptionalLong.empty() : OptionalLong.of(found);
  }

  private static long number(JsonNode row) {
    return Long.decode(row.get("id").asString());
  }
}
