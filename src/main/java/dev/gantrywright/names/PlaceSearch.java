package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds places of a folder by what the user types: every word must stand in name or comment. */
final class PlaceSearch {
  private record Entry(Candidate candidate, String name, String around) {}

  private record Ranked(Candidate candidate, int rank) {}

  private final List<Candidate> candidates;
  private List<Entry> entries;

  PlaceSearch(List<Candidate> candidates) {
    this.candidates = candidates;
  }

  /** Folded once, at the first search; searching is then quick enough for every key stroke. */
  private synchronized List<Entry> entries() {
    if (entries == null) {
      List<Entry> all = new ArrayList<>(candidates.size());
      for (Candidate one : candidates) {
        String around =
            Folded.text(one.text() + " " + one.comment() + " " + one.file())
                + (one.setting() == null ? "" : " " + Folded.text(one.setting().section()));
        all.add(new Entry(one, Folded.text(one.shown()), around));
      }
      entries = all;
    }
    return entries;
  }

  /** The best places first; all of them, in file order, for a blank text. */
  List<FoundPlace> find(String text, int most) {
    List<String> wanted = Folded.words(text);
    List<Ranked> found = new ArrayList<>();
    for (Entry entry : entries()) {
      int rank = rank(entry, wanted);
      if (rank >= 0) {
        found.add(new Ranked(entry.candidate(), rank));
      }
    }
    found.sort(Comparator.comparingInt(Ranked::rank));
    return found.subList(0, Math.min(most, found.size())).stream()
        .map(ranked -> found(ranked.candidate()))
        .toList();
  }

  static FoundPlace found(Candidate one) {
    return new FoundPlace(
        one.macro(),
        one.element(),
        one.text(),
        one.comment(),
        one.file(),
        one.line(),
        one.section(),
        one.on());
  }

  /** Lower is better; -1 where a word is missing. */
  private static int rank(Entry entry, List<String> wanted) {
    int rank = 0;
    for (String word : wanted) {
      int at = entry.name().indexOf(word);
      if (at == 0) {
        continue;
      }
      if (at > 0) {
        rank += 1;
      } else if (entry.around().contains(word)) {
        rank += 3;
      } else {
        return -1;
      }
    }
    return rank;
  }
}
