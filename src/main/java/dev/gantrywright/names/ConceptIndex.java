package dev.gantrywright.names;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which candidates speak of which concept, so that a field need not look at all of them. */
final class ConceptIndex {
  private final List<Candidate> candidates;
  private final BitSet[] speaking;
  private final Map<String, BitSet> named = new HashMap<>();

  /**
   * An index.
   *
   * @param concepts how many concepts there are
   */
  ConceptIndex(List<Candidate> candidates, int concepts) {
    this.candidates = candidates;
    speaking = new BitSet[concepts];
    Arrays.setAll(speaking, concept -> new BitSet(candidates.size()));
    for (int i = 0; i < candidates.size(); i++) {
      float[] all = candidates.get(i).all();
      for (int concept = 0; concept < concepts; concept++) {
        if (Scorer.heard(all[concept])) {
          speaking[concept].set(i);
        }
      }
      named.computeIfAbsent(candidates.get(i).macro(), name -> new BitSet()).set(i);
    }
  }

  List<Candidate> candidates() {
    return candidates;
  }

  /** The candidates that speak of one of the concepts, or have one of the names. */
  BitSet speaking(int[] concepts, Iterable<String> names) {
    BitSet all = new BitSet(candidates.size());
    for (int concept : concepts) {
      all.or(speaking[concept]);
    }
    for (String name : names) {
      all.or(named.getOrDefault(name, new BitSet()));
    }
    return all;
  }
}
