package dev.gantrywright.rules;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/** A list of rules that is run as a whole, or in part after an edit. Immutable. */
public final class RuleBook {
  private static final int MOST_PATHS = 4096;

  private final List<Entry> entries;
  private final Memo memo = new Memo();

  /** Field path to the rules that read it; a workshop's paths are some hundreds. */
  private final Map<String, BitSet> readers = new ConcurrentHashMap<>();

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
        || !Objects.equals(then.unreadFolder(), now.unreadFolder())
        || before.byRule().size() != entries.size()) {
      return run(now);
    }
    BitSet touched = new BitSet();
    changed.forEach(path -> touched.or(readers(path)));
    Context context = new Context(now, memo);
    List<List<Finding>> found = new ArrayList<>(before.byRule());
    for (int at = touched.nextSetBit(0); at >= 0; at = touched.nextSetBit(at + 1)) {
      found.set(at, entries.get(at).run(context));
    }
    return new Checked(now, found);
  }

  /** Which rules read the field. */
  private BitSet readers(String path) {
    BitSet known = readers.get(path);
    if (known != null) {
      return known;
    }
    String[] segments = path.split("\\.", -1);
    BitSet found = new BitSet(entries.size());
    for (int at = 0; at < entries.size(); at++) {
      found.set(at, entries.get(at).reads(segments));
    }
    if (readers.size() < MOST_PATHS) {
      readers.put(path, found);
    }
    return found;
  }
}
