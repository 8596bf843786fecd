package dev.gantrywright.app.sheet;

import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Section;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What can hurt whoever opens the machine with this sheet in hand. */
final class CautionPart {
  private CautionPart() {}

  static Section section() {
    List<Block> cautions = new ArrayList<>();
    try (InputStream in = CautionPart.class.getResourceAsStream("cautions.json")) {
      for (JsonNode row : JsonMapper.shared().readTree(in.readAllBytes()).path("cautions")) {
        cautions.add(
            new Block.Caution(
                row.path("signal").asString(""),
                row.path("hazard").asString(""),
                row.path("avoid").asString(""),
                row.path("who").asString("")));
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return new Section("cautions", "Before you open the machine", cautions);
  }
}
