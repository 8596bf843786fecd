package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Keeps what the branches of an open conditional would each do to the macros, and joins it at the
 * end: a name that all branches leave with the same meaning has it, any other has several.
 */
final class Alternatives {
  private static final int MOST = 32;

  /** Meanings that all joins of a run may look at; a header needs some thousands. */
  private static final long MOST_JOINED = 4_000_000;

  private record Change(MacroTable.Symbol symbol, Meaning before) {}

  private final List<Change> journal = new ArrayList<>();
  private int depth;
  private long joined;
  private boolean spent;

  /** Whether the evaluation stands in a branch that may or may not be taken. */
  boolean open() {
    return depth > 0;
  }

  /** Starts a branch; what it changes can be taken back from the mark. */
  int begin() {
    depth++;
    return journal.size();
  }

  /** Ends a branch: what it changed, all of it taken back. */
  Map<MacroTable.Symbol, Meaning> end(int mark) {
    depth--;
    if (spent) {
      if (depth == 0) {
        journal.clear();
      }
      return Map.of();
    }
    Map<MacroTable.Symbol, Meaning> after = new LinkedHashMap<>();
    for (int i = mark; i < journal.size(); i++) {
      MacroTable.Symbol symbol = journal.get(i).symbol();
      after.put(symbol, symbol.meaning());
    }
    for (int i = journal.size() - 1; i >= mark; i--) {
      journal.get(i).symbol().set(journal.get(i).before());
    }
    journal.subList(mark, journal.size()).clear();
    joined += after.size();
    if (joined > MOST_JOINED) {
      spent = true;
      journal.forEach(change -> change.symbol().set(Meaning.EXTERNAL));
    }
    return after;
  }

  /**
   * Whether open conditions stand in each other so often that branches are no longer told apart:
   * what one of them defines or takes away is then not settled, inside it and behind it.
   */
  boolean spent() {
    return spent;
  }

  /** Gives a symbol a new meaning, which an open branch can take back. */
  void set(MacroTable.Symbol symbol, Meaning meaning) {
    if (depth > 0 && spent) {
      symbol.set(Meaning.EXTERNAL);
      return;
    }
    if (depth > 0) {
      journal.add(new Change(symbol, symbol.meaning()));
    }
    symbol.set(meaning);
  }

  void join(List<Map<MacroTable.Symbol, Meaning>> branches) {
    Map<MacroTable.Symbol, Joined> all = new LinkedHashMap<>();
    for (int i = 0; i < branches.size(); i++) {
      int branch = i;
      branches
          .get(i)
          .forEach(
              (symbol, meaning) -> all.computeIfAbsent(symbol, Joined::new).add(branch, meaning));
    }
    all.forEach(
        (symbol, meanings) -> set(symbol, spent ? Meaning.EXTERNAL : meanings.of(branches.size())));
  }

  /** What one symbol may mean behind a conditional; a branch that leaves it alone adds nothing. */
  private static final class Joined {
    private final Meaning before;

    /** All meanings so far as one; {@code all} has them once they are more than that. */
    private Meaning one;

    private Set<Meaning> all;
    private int next;

    Joined(MacroTable.Symbol symbol) {
      this.before = symbol.meaning();
    }

    void add(int branch, Meaning meaning) {
      if (branch > next) {
        put(before);
      }
      next = branch + 1;
      put(meaning);
    }

    private void put(Meaning meaning) {
      if (one == null) {
        one = meaning;
      } else if (all == null && holds(one, meaning)) {
        return;
      } else {
        if (all == null) {
          all = new LinkedHashSet<>(each(one));
        }
        if (all.size() <= MOST) {
          all.addAll(each(meaning));
        }
      }
    }

    private static boolean holds(Meaning known, Meaning meaning) {
      return known.equals(meaning)
          || known instanceof Meaning.Several several && several.alternatives().contains(meaning);
    }

    private static List<Meaning> each(Meaning meaning) {
      return meaning instanceof Meaning.Several several ? several.alternatives() : List.of(meaning);
    }

    Meaning of(int branches) {
      if (next < branches) {
        put(before);
      }
      if (all == null) {
        return one;
      }
      return all.size() > MOST ? Meaning.EXTERNAL : new Meaning.Several(List.copyOf(all));
    }
  }
}
