package dev.gantrywright.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A list of rules that is run as a whole, or in part after an edit. Immutable. */
public final class RuleBook {
  private final List<Entry> entries;
  private final Memo memo = new Memo();

  private RuleBook(List<Entry> entries) {
    this.entries = entries;
  }

  /**
   * A book of these rules, in this order.
   *
   * @throws IllegalArgumentException where a check lacks {@link Rule}
   */
  public static RuleBook of(List<? extends Check> checks) {
    return new RuleBook(checks.stream().map(Entry::new).toList());
  }

  /** What each rule says about itself, in the order of the book. */
  public List<Rule> rules() {
    return entries.stream().map(Entry::rule).toList();
  }

  /** The part of this book that is one rule; empty where no rule has the id. */
  public RuleBook only(String id) {
    return new RuleBook(entries.stream().filter(entry -> entry.rule().id().equals(id)).toList());
  }

  /** Every finding, worst first. */
  public List<Finding> check(CheckInput input) {
    return run(input).findings();
  }

  /** Runs every rule. */
  public Checked run(CheckInput input) {
    Context context = new Context(input, memo);
    List<List<Finding>> found = new ArrayList<>(entries.size());
    for (Entry entry : entries) {
      found.add(entry.run(context));
    }
    return new Checked(input, found);
  }

  /**
   * Runs again only the rules that read a changed profile field. Where anything but the profile
   * changed, every rule runs.
   *
   * @param changed paths of the changed profile fields
   */
  public Checked rerun(Checked before, CheckInput now, Collection<String> changed) {
    CheckInput then = before.input();
    if (then.sheet() != now.sheet()
        || then.folder() != now.folder()
        || then.names() != now.names()
        || then.catalog() != now.catalog()
        || before.byRule().size() != entries.size()) {
      return run(now);
    }
    List<String[]> paths = changed.stream().map(path -> path.split("\\.", -1)).toList();
    Context context = new Context(now, memo);
    List<List<Finding>> found = new ArrayList<>(before.byRule());
    for (int at = 0; at < entries.size(); at++) {
      Entry entry = entries.get(at);
      if (paths.stream().anyMatch(entry::reads)) {
        found.set(at, entry.run(context));
      }
    }
    return new Checked(now, found);
  }
}
