package dev.gantrywright.rules;

/**
 * What a rule says about itself, read from its annotation once: an annotation answers every
 * question by way of a proxy, which takes longer than most checks.
 *
 * @param link the rule's page, relative to the documentation
 */
record RuleFacts(
    String id,
    String slug,
    Level level,
    Family family,
    String summary,
    String source,
    String link) {
  static RuleFacts of(Rule rule) {
    return new RuleFacts(
        rule.id(),
        rule.slug(),
        rule.level(),
        rule.family(),
        rule.summary(),
        rule.source(),
        RulePages.link(rule));
  }
}
