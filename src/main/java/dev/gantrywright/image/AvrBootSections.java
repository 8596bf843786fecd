package dev.gantrywright.image;

import java.util.Locale;
import java.util.OptionalLong;
import tools.jackson.databind.JsonNode;

/** The largest boot section of each AVR part, from {@code avr-boot-sections.json}. */
final class AvrBootSections {
  private static final JsonNode ROWS = FactTable.open("avr-boot-sections.json").get("parts");

  private AvrBootSections() {}

  /** Bytes at the end of flash that the fuses can give to a bootloader. */
  static OptionalLong largest(String part) {
    for (JsonNode row : ROWS) {
      if (row.get("part")
          .asString()
          .toUpperCase(Locale.ROOT)
          .equals(part.toUpperCase(Locale.ROOT))) {
        return OptionalLong.of(row.get("bytes").asLong());
      }
    }
    return OptionalLong.empty();
  }
}
