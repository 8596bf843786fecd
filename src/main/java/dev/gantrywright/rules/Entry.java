package dev.gantrywright.rules;

import java.util.List;
import java.util.stream.Stream;

/** One rule of a book: its check, what it says about itself, the fields that it reads. */
final class Entry {
  private final Check check;
  private final Rule rule;
  private final RuleFacts facts;
  private final List<PathPattern> reads;

  /**
   * Reads the annotation of a check.
   *
   * @throws IllegalArgumentException where it has none
   */
  Entry(Check check) {
    this.check = check;
    this.rule = check.getClass().getAnnotation(Rule.class);
    if (rule == null) {
      throw new IllegalArgumentException(check.getClass().getName() + " lacks @Rule");
    }
    this.facts = RuleFacts.of(rule);
    this.reads = Stream.of(rule.reads()).map(PathPattern::of).toList();
  }

  Rule rule() {
    return rule;
  }

  boolean reads(String[] path) {
    for (PathPattern pattern : reads) {
      if (pattern.touches(path)) {
        return true;
      }
    }
    return false;
  }

  /** Runs the rule; one that throws yields one finding about itself. */
  List<Finding> run(Context context) {
    if (facts.family() == Family.FOLDER && !context.folderOpen()) {
      return List.of();
    }
    Collected found = new Collected(facts, context);
    try {
      check.check(context, found);
      return found.findings();
    } catch (RuntimeException fault) {
      return List.of(RuleFault.of(rule, fault));
    }
  }
}
