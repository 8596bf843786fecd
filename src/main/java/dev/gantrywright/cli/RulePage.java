package dev.gantrywright.cli;

import dev.gantrywright.rules.NearMiss;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.RulePages;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A rule's page as the terminal shows it. */
final class RulePage {
  private RulePage() {}

  /**
   * The rule that is meant.
   *
   * @param wanted id or slug, in any case
   */
  static Rule rule(String wanted, List<Rule> rules) {
    String name = wanted.strip();
    return rules.stream()
        .filter(r -> r.id().equalsIgnoreCase(name) || r.slug().equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(() -> unknown(name, rules));
  }

  /**
   * The page under a head that says what the rule says about itself.
   *
   * @param width columns to keep to
   */
  static String text(Rule rule, int width) {
    StringBuilder text = new StringBuilder();
    text.append(rule.id()).append(' ').append(rule.slug()).append('\n');
    text.append(Paragraph.of("", "", rule.summary() + ".", width)).append('\n');
    head(text, "level:", rule.level().word(), width);
    head(text, "family:", rule.family().title(), width);
    head(text, "remedy:", remedy(rule), width);
    head(text, "reads:", String.join(", ", rule.reads()), width);
    head(text, "source:", rule.source(), width);
    text.append('\n');
    page(rule).lines().forEach(line -> text.append(line(line, width)));
    return text.toString();
  }

  /** The same as a document; the page is Markdown. */
  static Map<String, Object> document(Rule rule) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("id", rule.id());
    document.put("slug", rule.slug());
    document.put("summary", rule.summary());
    document.put("level", rule.level().word());
    document.put("family", rule.family().word());
    document.put("remedy", remedy(rule));
    document.put("reads", List.of(rule.reads()));
    document.put("source", rule.source());
    document.put("page", page(rule));
    return document;
  }

  private static String page(Rule rule) {
    return RulePages.help(rule.family(), rule.slug()).orElse("");
  }

  private static String remedy(Rule rule) {
    return rule.fix().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static void head(StringBuilder text, String what, String says, int width) {
    text.append(Paragraph.of(String.format("%-8s", what), " ".repeat(8), says, width));
  }

  /** One line of the page: headings stand bare, tables and code as they are, prose is broken. */
  private static String line(String line, int width) {
    if (line.startsWith("#")) {
      return line.replaceFirst("^#+ *", "") + "\n";
    }
    if (line.isBlank() || line.startsWith("|") || line.startsWith("    ")) {
      return line + "\n";
    }
    return Paragraph.of("", line.startsWith("- ") ? "  " : "", line, width);
  }

  private static UsageProblem unknown(String wanted, List<Rule> rules) {
    List<String> slugs = rules.stream().map(Rule::slug).toList();
    return new UsageProblem(
        "there is no rule "
            + wanted
            + NearMiss.of(wanted, slugs).map(near -> "; " + near + " is one").orElse("")
            + "; ids look like GW-M001, docs/rules/index.md lists them");
  }
}
