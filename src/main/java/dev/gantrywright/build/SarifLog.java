package dev.gantrywright.build;

import dev.gantrywright.build.Diagnostic.Level;
import dev.gantrywright.build.Diagnostic.Origin;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import tools.jackson.databind.JsonNode;

/**
 * Results of a SARIF log.
 *
 * <p>Source: OASIS SARIF 2.1.0, 3.27 result, 3.29 physicalLocation, 3.4 artifactLocation (RFC 3986
 * URIs).
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
                      file(at),
                      at.path("region").path("startLine").asInt(0),
                      at.path("region").path("startColumn").asInt(0),
                      related.path("message").path("text").asString("")));
            });
    String rule = result.path("ruleId").asString("");
    return new Diagnostic(
        Origin.COMPILER,
        level(result.path("level").asString("warning")),
        file(place),
        region.path("startLine").asInt(0),
        region.path("startColumn").asInt(0),
        rule.startsWith("-") ? CompilerText.flag(rule) : "",
        text,
        QuotedNames.in(text),
        OptionalLong.empty(),
        notes);
  }

  /** The file as compilers write it elsewhere: a path, where the log has a URI of the disk. */
  private static String file(JsonNode place) {
    String uri = place.path("artifactLocation").path("uri").asString("");
    try {
      URI parsed = new URI(uri);
      if ("file".equals(parsed.getScheme())) {
        return Path.of(new URI("file", null, parsed.getPath(), null)).toString();
      }
      return parsed.getScheme() == null && parsed.getPath() != null ? parsed.getPath() : uri;
    } catch (URISyntaxException | IllegalArgumentException noPath) {
      return uri;
    }
  }

  private static Level level(String word) {
    return switch (word) {
      case "error" -> Level.ERROR;
      case "warning" -> Level.WARNING;
      default -> Level.NOTE;
    };
  }
}
