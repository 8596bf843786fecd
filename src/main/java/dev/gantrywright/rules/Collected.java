package dev.gantrywright.rules;

import java.util.ArrayList;
import java.util.List;

/** Turns what one rule reports into findings. */
final class Collected implements Sink {
  private final RuleFacts rule;
  private final Context context;
  private List<Finding> findings = List.of();

  Collected(RuleFacts rule, Context context) {
    this.rule = rule;
    this.context = context;
  }

  @Override
  public void report(String path, String evidence, String source, List<Remedy> remedies) {
    if (findings.isEmpty()) {
      findings = new ArrayList<>(4);
    }
    findings.add(
        new Finding(
            rule.id(),
            rule.slug(),
            rule.level(),
            rule.family(),
            path,
            context.place(path),
            rule.summary(),
            evidence,
            source == null ? rule.source() : source,
            remedies,
            rule.link()));
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }
}
