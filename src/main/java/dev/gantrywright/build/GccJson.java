package dev.gantrywright.build;

import dev.gantrywright.build.Diagnostic.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Consumer;
import tools.jackson.databind.JsonNode;

/**
 * One item of GCC's JSON list.
 *
 * <p>Source: GCC manual, {@code -fdiagnostics-format=json}.
 */
final class GccJson {
  private GccJson() {}

  /** GCC gathers what follows an item as its children; only notes belong to it. */
  static void read(JsonNode item, Consumer<Diagnostic> out) {
    if (!item.hasNonNull("kind") || !item.hasNonNull("message")) {
      return;
    }
    List<Diagnostic.Note> notes = new ArrayList<>();
    List<JsonNode> others = new ArrayList<>();
    for (JsonNode child : item.path("children")) {
      if (!child.path("kind").asString("").equals("note")) {
        others.add(child);
        continue;
      }
      JsonNode at = caret(child);
      notes.add(
          new Diagnostic.Note(
              at.path("file").asString(""),
              at.path("line").asInt(0),
              at.path("column").asInt(0),
              child.path("message").asString("")));
    }
    out.accept(diagnostic(item, notes));
    others.forEach(other -> read(other, out));
  }

  private static Diagnostic diagnostic(JsonNode item, List<Diagnostic.Note> notes) {
    JsonNode at = caret(item);
    String text = item.get("message").asString("");
    return new Diagnostic(
        Origin.COMPILER,
        CompilerText.level(item.get("kind").asString("")),
        at.path("file").asString(""),
        at.path("line").asInt(0),
        at.path("column").asInt(0),
        CompilerText.flag(item.path("option").asString("")),
        text,
        QuotedNames.in(text),
        OptionalLong.empty(),
        notes);
  }

  private static JsonNode caret(JsonNode item) {
    return item.path("locations").path(0).path("caret");
  }
}
