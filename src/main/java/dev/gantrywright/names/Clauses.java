package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a comment says of single values: {@code 1 = breaks when hit, 0 = makes when hit}. */
final class Clauses {
  private static final Pattern VALUE_FIRST =
      Pattern.compile(
          "(?<![\\w.+-])(true|false|vrai|faux|wahr|falsch|ja|nein|verdadero|falso|vero|on|off|yes|-?\\d{1,4}|[A-Za-z]\\w*_\\w+)"
              + "\\s*(=>|->|=|:|means|says|for|pour|fuer|für|para|if|when|wenn|si|is|turns|to|vers|hacia|verso|a|,)?\\s+([^;,\\n|]*)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern VALUE_LAST =
      Pattern.compile(
          "([^;,\\n|:=()]+?)\\s*[:=]\\s*(true|false|vrai|faux|wahr|falsch|verdadero|falso|vero|on|off|yes|no|-?\\d{1,4})\\s*(?=$|[;,.)\\n|])",
          Pattern.CASE_INSENSITIVE);

  private Clauses() {}

  /** Each value that the comment explains, folded, with the explanation, folded. */
  static Map<String, String> of(String comment) {
    Map<String, String> clauses = new LinkedHashMap<>();
    String text = Folded.text(comment);
    List<String> cut = new ArrayList<>();
    for (String line : text.split("[;\\n|,]|\\.\\s")) {
      cut.add(line.strip());
    }
    for (String clause : cut) {
      Matcher last = VALUE_LAST.matcher(clause);
      Matcher first = VALUE_FIRST.matcher(clause);
      boolean leads = first.find() && first.start() <= 2;
      if (!leads && last.find()) {
        clauses.putIfAbsent(word(last.group(2)), last.group(1).strip());
      } else if (leads || (first.reset().find() && !first.group(1).equals("on"))) {
        clauses.putIfAbsent(word(first.group(1)), first.group(3).strip());
      }
    }
    return clauses;
  }

  /** The clause for yes, whatever the comment calls it. */
  static Optional<String> yes(Map<String, String> clauses) {
    return any(clauses, "true", "1", "on", "yes");
  }

  /** The clause for no. */
  static Optional<String> no(Map<String, String> clauses) {
    return any(clauses, "false", "0", "off", "no");
  }

  private static Optional<String> any(Map<String, String> clauses, String... words) {
    for (String word : words) {
      String clause = clauses.get(word);
      if (clause != null) {
        return Optional.of(clause);
      }
    }
    return Optional.empty();
  }

  private static String word(String value) {
    return switch (value) {
      case "vrai", "wahr", "verdadero", "vero", "ja" -> "true";
      case "faux", "falsch", "falso", "nein" -> "false";
      default -> value;
    };
  }
}
