package dev.gantrywright.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Gathers the pages of the rules, one document a family and an index; made, never written. */
final class RuleDocs {
  private static final String MADE =
      "<!-- Made from the rules and their pages; do not edit. See README.md here. -->\n\n";

  private static final Path PAGES = Path.of("src/main/resources/dev/gantrywright/rules");

  private RuleDocs() {}

  /** Every document by its name below {@code docs/rules}. */
  static Map<String, String> of(List<Rule> rules) throws IOException {
    Map<String, String> docs = new LinkedHashMap<>();
    docs.put("index.md", index(rules));
    for (Family family : Family.values()) {
      List<Rule> own = rules.stream().filter(rule -> rule.family() == family).toList();
      if (!own.isEmpty()) {
        docs.put(family.word() + ".md", family(family, own));
      }
    }
    return docs;
  }

  /** Writes into each rule's page what the rule says of its bad examples. */
  static void writeFindings(RuleBook book) throws IOException {
    for (Rule rule : book.rules()) {
      String page = Files.readString(page(rule));
      Files.writeString(page(rule), Example.withFindings(page, rule, book.only(rule.id())));
    }
  }

  /** The page's source, which may be newer than the built copy of it. */
  private static Path page(Rule rule) {
    return PAGES.resolve(rule.family().word()).resolve(rule.slug() + ".md");
  }

  private static String index(List<Rule> rules) {
    StringBuilder text = new StringBuilder(MADE);
    text.append("# The rules\n\n").append(rules.size()).append(" rules.\n");
    Family family = null;
    for (Rule rule : rules) {
      if (rule.family() != family) {
        family = rule.family();
        text.append("\n## ").append(family.title()).append("\n\n");
        text.append("| id | rule | level | remedy | finds |\n| --- | --- | --- | --- | --- |\n");
      }
      text.append(
          "| %s | [%s](%s.md#%s) | %s | %s | %s |%n"
              .formatted(
                  rule.id(),
                  rule.slug(),
                  rule.family().word(),
                  rule.slug(),
                  rule.level().word(),
                  fix(rule),
                  rule.summary()));
    }
    return text.toString();
  }

  private static String family(Family family, List<Rule> rules) throws IOException {
    StringBuilder text = new StringBuilder(MADE);
    text.append("# ").append(family.title()).append("\n");
    for (Rule rule : rules) {
      text.append("\n## ").append(rule.slug()).append("\n\n");
      text.append("**").append(rule.summary()).append(".** ");
      text.append(rule.id()).append(", ").append(rule.level().word());
      text.append(", remedy: ").append(fix(rule)).append(".\n\n");
      text.append(Files.readString(page(rule)).replaceAll("(?m)^## ", "### ").strip());
      text.append("\n\n### Source\n\n").append(rule.source()).append("\n\n");
      text.append("Reads `").append(String.join("`, `", rule.reads())).append("`.\n");
    }
    return text.toString();
  }

  private static String fix(Rule rule) {
    return rule.fix().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
