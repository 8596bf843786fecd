package dev.gantrywright.build;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Identifiers that a message puts in quotes, straight or curly. */
final class QuotedNames {
  private static final Pattern QUOTED =
      Pattern.compile("[‘'`\"]([A-Za-z_][A-Za-z0-9_]*)(?:\\([^’'\"]*\\))?[’'\"]");

  private QuotedNames() {}

  static List<String> in(String text) {
    List<String> out = new ArrayList<>();
    Matcher m = QUOTED.matcher(text);
    while (m.find()) {
      if (!out.contains(m.group(1))) {
        out.add(m.group(1));
      }
    }
    return out;
  }
}
