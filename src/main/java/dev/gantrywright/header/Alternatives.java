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

  private record Change(MacroTable.Symbol symbol, Meaning before) {}

  private final List<Change> journal = new ArrayList<>();
  private int depth;

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
    Map<MacroTable.Symbol, Meaning> after = new LinkedHashMap<>();
    for (int i = mark; i < journal.size(); i++) {
      MacroTable.Symbol symbol = journal.get(i).symbol();
      after.put(symbol, symbol.meaning());
    }
    for (int i = journal.size() - 1; i >= mark; i--) {
      journal.get(i).symbol().set(journal.get(i).before());
    }
    journal.subList(mark, journal.size()).clear();
    return after;
  }

  /** Gives a symbol a new meaning, which an open branch can take back. */
  void set(MacroTable.Symbol symbol, Meaning meaning) {
    if (depth > 0) {
      journal.add(new Change(symbol, symbol.meaning()));
    }
    symbol.set(meaning);
  }

  void join(List<Map<MacroTable.Symbol, Meaning>> branches) {
    Set<MacroTable.Symbol> touched = new LinkedHashSet<>();
    branches.forEach(branch -> touched.addAll(branch.keySet()));
    for (MacroTable.Symbol symbol : touched) {
      Set<Meaning> all = new LinkedHashSet<>();
      for (Map<MacroTable.Symbol, Meaning> branch : branches) {
        Meaning meaning = branch.getOrDefault(symbol, symbol.meaning());
        if (meaning instanceof Meaning.Several several) {
          all.addAll(several.alternatives());
        } else {
          all.add(meaning);
        }
      }
      boolean one = all.size() == 1;
      boolean few = all.size() <= MOST;
      Meaning joined =
          one
              ? all.iterator().next()
              : few ? new Meaning.Several(List.copyOf(all)) : Meaning.EXTERNAL;
      set(symbol, joined);
    }
  }
}
