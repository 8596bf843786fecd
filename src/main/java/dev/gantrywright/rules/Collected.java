package dev.gantrywright.rules;

import java.util.ArrayList;
import java.util.List;

/** Turns what one rule reports into findings. */
final class Collected implements Sink {
  private final Rule rule;
  private final List<Finding> findings = new ArrayList<>(0);

  Collected(Rule rule) {
    this.rule = rule;
  }

  @Override
  public void report(String path, String evidence, String source, List<Remedy> remedies) {
    findings.add(
        new Finding(
            rule.id(),
            rule.slug(),
            rule.level(),
            rule.family(),
            path,
            Place.of(path),
            rule.summary(),
            evidence,
            source == null ? rule.source() : source,
            remedies,
            RulePages.link(rule)));
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }
}
