package dev.gantrywright.names;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;

/** Which candidates speak of which concept, so that a field need not look at all of them. */
final class ConceptIndex {
  private final List<Candidate> candidates;
  private final BitSet[] speaking;

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
    }
  }

  List<Candidate> candidates() {
    return candidates;
  }

  /** The candidates that speak of one of the concepts, or have one of the names. */
  BitSet speaking(int[] concepts, Set<String> names) {
    BitSet all = new BitSet(candidates.size());
    for (int concept : concepts) {
      all.or(speaking[concept]);
    }
    for (int i = 0; !names.isEmpty() && i < candidates.size(); i++) {
      if (names.contains(candidates.get(i).macro())) {
        all.set(i);
      }
    }
    return all;
  }
}
