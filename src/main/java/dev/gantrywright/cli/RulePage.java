package dev.gantrywright.cli;

import dev.gantrywright.rules.NearMiss;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.RulePages;
import java.util.List;
import java.util.Locale;

/** A rule's page as the terminal shows it. */
final class RulePage {
  private RulePage() {}

  /**
   * The page under a head that says what the rule says about itself.
   *
   * @param wanted id or slug, in any case
   */
  static String text(String wanted, List<Rule> rules) {
    String name = wanted.strip();
    Rule rule =
        rules.stream()
            .filter(r -> r.id().equalsIgnoreCase(name) || r.slug().equalsIgnoreCase(name))
            .findFirst()
            .orElseThrow(() -> unknown(name, rules));
    return rule.id()
        + " "
        + rule.slug()
        + "\n"
        + rule.summary()
        + ".\n\nlevel:  "
        + rule.level().word()
        + "\nfamily: "
        + rule.family().title()
        + "\nremedy: "
        + rule.fix().name().toLowerCase(Locale.ROOT).replace('_', ' ')
        + "\nreads:  "
        + String.join(", ", rule.reads())
        + "\nsource: "
        + rule.source()
        + "\n\n"
        + RulePages.help(rule.family(), rule.slug()).orElse("");
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
