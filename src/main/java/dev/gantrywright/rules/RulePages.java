package dev.gantrywright.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The pages of the rules: Markdown that is documentation, help and test in one. */
public final class RulePages {
  private RulePages() {}

  /** Where a rule's page stands among the gathered pages of its family. */
  public static String link(Rule rule) {
    return "docs/rules/" + rule.family().word() + ".md#" + rule.slug();
  }

  /** The whole page; empty where the rule has none. */
  public static Optional<String> text(Rule rule) {
    return text(rule.family(), rule.slug());
  }

  /** The whole page of the rule with this slug; empty where there is none. */
  public static Optional<String> text(Family family, String slug) {
    String name = family.word() + "/" + slug + ".md";
    try (InputStream in = RulePages.class.getResourceAsStream(name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The page without its examples, as help shows it; empty where there is none. */
  public static Optional<String> help(Family family, String slug) {
    return text(family, slug).map(RulePages::prose);
  }

  private static String prose(String page) {
    int examples = page.indexOf("\n## Examples");
    return (examples < 0 ? page : page.substring(0, examples)).strip() + "\n";
  }
}
