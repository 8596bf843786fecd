package dev.gantrywright.build;

import dev.gantrywright.build.Diagnostic.Level;
import dev.gantrywright.build.Diagnostic.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import tools.jackson.databind.JsonNode;

/**
 * Results of a SARIF log.
 *
 * <p>Source: OASIS SARIF 2.1.0, 3.27 result, 3.29 physicalLocation.
 */
final class SarifLog {
  private SarifLog() {}

  static List<Diagnostic> read(JsonNode log) {
    List<Diagnostic> out = new ArrayList<>();
    for (JsonNode run : log.path("runs")) {
      run.path("results").forEach(result -> out.add(result(result)));
    }
    return out;
  }

  private static Diagnostic result(JsonNode result) {
    JsonNode place = result.path("locations").path(0).path("physicalLocation");
    JsonNode region = place.path("region");
    String text = result.path("message").path("text").asString("");
    List<Diagnostic.Note> notes = new ArrayList<>();
    result
        .path("relatedLocations")
        .forEach(
            related -> {
              JsonNode at = related.path("physicalLocation");
              notes.add(
                  new Diagnostic.Note(
                      at.path("artifactLocation").path("uri").asString(""),
                      at.path("region").path("startLine").asInt(0),
                      at.path("region").path("startColumn").asInt(0),
                      related.path("message").path("text").asString("")));
            });
    String rule = result.path("ruleId").asString("");
    return new Diagnostic(
        Origin.COMPILER,
        level(result.path("level").asString("warning")),
        place.path("artifactLocation").path("uri").asString(""),
        region.path("startLine").asInt(0),
        region.path("startColumn").asInt(0),
        rule.startsWith("-") ? CompilerText.flag(rule) : "",
        text,
        QuotedNames.in(text),
        OptionalLong.empty(),
        notes);
  }

  private static Level level(String word) {
    return switch (word) {
      case "error" -> Level.ERROR;
      case "warning" -> Level.WARNING;
      default -> Level.NOTE;
    };
  }
}
