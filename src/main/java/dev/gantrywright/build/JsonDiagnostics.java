package dev.gantrywright.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Diagnostics that a compiler prints as JSON: GCC's list ({@code -fdiagnostics-format=json}) or a
 * SARIF log ({@code sarif-stderr}), on one line or over several.
 */
final class JsonDiagnostics {
  private static final int LONGEST = 32 << 20;

  private final StringBuilder gathered = new StringBuilder();
  private int depth;
  private boolean inString;
  private boolean escaped;

  /** Whether a document has begun and not ended. */
  boolean inside() {
    return depth > 0;
  }

  /** Takes a line; gives the diagnostics once a document is complete. */
  Optional<List<Diagnostic>> take(String line) {
    if (depth == 0 && !opens(line)) {
      return Optional.empty();
    }
    count(line);
    gathered.append(line).append('\n');
    if (depth > 0 && gathered.length() < LONGEST) {
      return Optional.empty();
    }
    String text = gathered.toString();
    reset();
    return parse(text);
  }

  /** A list of objects, an empty list, or an object that looks like a SARIF log. */
  private static boolean opens(String line) {
    String s = line.stripLeading();
    return s.startsWith("[{\"")
        || s.equals("[]")
        || s.startsWith("{\"$schema\"")
        || s.equals("{")
        || s.startsWith("{\"version\"")
        || s.startsWith("{\"runs\"");
  }

  private void count(String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (escaped) {
        escaped = false;
      } else if (inString) {
        escaped = c == '\\';
        inString = c != '"';
      } else if (c == '"') {
        inString = true;
      } else if (c == '{' || c == '[') {
        depth++;
      } else if (c == '}' || c == ']') {
        depth--;
      }
    }
  }

  private void reset() {
    gathered.setLength(0);
    depth = 0;
    inString = false;
    escaped = false;
  }

  private static Optional<List<Diagnostic>> parse(String text) {
    JsonNode root;
    try {
      root = JsonMapper.shared().readTree(text);
    } catch (JacksonException e) {
      // Lines that only look like JSON are ordinary output.
      return Optional.empty();
    }
    List<Diagnostic> out = new ArrayList<>();
    if (root.isArray()) {
      root.forEach(item -> GccJson.read(item, out::add));
      return Optional.of(out);
    }
    return root.has("runs") ? Optional.of(SarifLog.read(root)) : Optional.empty();
  }
}
