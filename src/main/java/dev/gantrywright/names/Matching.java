package dev.gantrywright.names;

import dev.gantrywright.names.Match.Rival;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds for all fields together the places that fit best: scores, a first assignment, then a second
 * in which a candidate gains where its siblings (the same name but for axis, end or heater) already
 * carry the same field.
 */
final class Matching {
  /** A candidate must reach this share of a perfect score to be proposed at all. */
  private static final double LEAST_SHARE = 0.34;

  private static final int MOST_RIVALS = 8;
  private static final double SIBLINGS = 1.3;
  private static final double STEADY_VOTE = 0.5;

  private final ConceptIndex index;
  private final List<FieldRow> rows;
  private final Scorer scorer;
  private final Extra extra;
  private final Predicate taken;

  /** Whether a candidate is taken for other fields. */
  interface Predicate {
    boolean taken(Candidate candidate, LearnableField field);
  }

  /**
   * Prepares a matching.
   *
   * @param extra what else speaks for a pair
   * @param taken the candidates that a field cannot have
   */
  Matching(ConceptIndex index, List<FieldRow> rows, Scorer scorer, Extra extra, Predicate taken) {
    this.index = index;
    this.rows = rows;
    this.scorer = scorer;
    this.extra = extra;
    this.taken = taken;
  }

  List<Match> best() {
    List<List<Rival>> scored = scored();
    List<Match> first = assigned(scored);
    for (int round = 0; round < 2; round++) {
      first = assigned(withSiblings(scored, first));
    }
    return first;
  }

  private List<List<Rival>> scored() {
    Map<LearnableField, List<double[]>> byField = new HashMap<>();
    List<List<Rival>> all = new ArrayList<>();
    for (FieldRow row : rows) {
      List<double[]> fitting =
          byField.computeIfAbsent(row.field(), field -> fitting(field, row.most()));
      List<Rival> rivals = new ArrayList<>();
      for (double[] pair : fitting) {
        Candidate candidate = index.candidates().get((int) pair[0]);
        double place = scorer.place(candidate, row.field(), row.axis(), row.end(), row.heater());
        if (place <= Scorer.NEVER / 2) {
          continue;
        }
        double score = pair[1] + place + extra.of(row.field(), candidate);
        if (score > row.most() * LEAST_SHARE - SIBLINGS) {
          rivals.add(new Rival(candidate, score));
        }
      }
      rivals.sort(Comparator.comparingDouble(Rival::score).reversed());
      all.add(rivals.subList(0, Math.min(rivals.size(), MOST_RIVALS)));
    }
    return all;
  }

  /** Index and score (without place) of the candidates that a field might take. */
  private List<double[]> fitting(LearnableField field, double most) {
    List<double[]> fitting = new ArrayList<>();
    double least = -most * 0.35;
    BitSet open = index.speaking(scorer.concepts(field), extra.names(field));
    for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
      Candidate candidate = index.candidates().get(i);
      if (taken.taken(candidate, field)) {
        continue;
      }
      double words = scorer.words(candidate, field);
      if (words < least && !extra.helps(field, candidate)) {
        continue;
      }
      words = Math.max(words, -most);
      double value = scorer.value(candidate, field);
      if (value <= ValueShape.IMPOSSIBLE + 1.5) {
        continue;
      }
      fitting.add(new double[] {i, words + value - scorer.objections(candidate, field, i)});
    }
    return fitting;
  }

  private List<Match> assigned(List<List<Rival>> scored) {
    Map<Candidate, Integer> columns = new LinkedHashMap<>();
    for (List<Rival> rivals : scored) {
      for (Rival rival : rivals) {
        columns.putIfAbsent(rival.candidate(), columns.size());
      }
    }
    double[][] gain = new double[rows.size()][columns.size()];
    for (int i = 0; i < gain.length; i++) {
      java.util.Arrays.fill(gain[i], -1e6);
      FieldRow row = rows.get(i);
      for (Rival rival : scored.get(i)) {
        double shared = row.shared() ? 0.15 : 0;
        double over = rival.score() - row.most() * LEAST_SHARE - shared;
        gain[i][columns.get(rival.candidate())] = over > 0 ? over : -1e6;
      }
    }
    int[] best = assignment(gain, scored);
    List<Candidate> byColumn = new ArrayList<>(columns.keySet());
    Set<Candidate> taken = new HashSet<>();
    for (int column : best) {
      if (column >= 0) {
        taken.add(byColumn.get(column));
      }
    }
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i < best.length; i++) {
      if (best[i] >= 0) {
        matches.add(match(rows.get(i), byColumn.get(best[i]), scored.get(i), taken));
      }
    }
    return matches;
  }

  /** Rows that nothing fits take no part. */
  private static int[] assignment(double[][] gain, List<List<Rival>> scored) {
    int[] rows =
        java.util.stream.IntStream.range(0, gain.length)
            .filter(i -> !scored.get(i).isEmpty())
            .toArray();
    double[][] some = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      some[i] = gain[rows[i]];
    }
    int[] found = Assignment.best(some);
    int[] all = new int[gain.length];
    java.util.Arrays.fill(all, -1);
    for (int i = 0; i < rows.length; i++) {
      all[rows[i]] = found[i];
    }
    return all;
  }

  private static Match match(
      FieldRow row, Candidate chosen, List<Rival> rivals, Set<Candidate> taken) {
    double score = 0;
    double next = row.most() * LEAST_SHARE * 0.5;
    List<Rival> others = new ArrayList<>();
    for (Rival rival : rivals) {
      if (rival.candidate() == chosen) {
        score = rival.score();
        continue;
      }
      boolean free = !taken.contains(rival.candidate());
      next = Math.max(next, rival.score() - (free ? 0 : 2));
      if (others.size() < 2) {
        others.add(rival);
      }
    }
    return new Match(row, chosen, score, score / row.most(), score - next, others);
  }

  private List<List<Rival>> withSiblings(List<List<Rival>> scored, List<Match> matches) {
    Map<String, Double> votes = new HashMap<>();
    Map<LearnableField, Double> total = new HashMap<>();
    for (Match match : matches) {
      if (match.share() < STEADY_VOTE || match.row().shared()) {
        continue;
      }
      String key = match.row().field().path() + " " + match.candidate().template();
      votes.merge(key, match.share(), Double::sum);
      total.merge(match.row().field(), match.share(), Double::sum);
    }
    List<List<Rival>> next = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      FieldRow row = rows.get(i);
      List<Rival> rivals = new ArrayList<>();
      for (Rival rival : scored.get(i)) {
        String key = row.field().path() + " " + rival.candidate().template();
        double vote = votes.getOrDefault(key, 0.0);
        double all = total.getOrDefault(row.field(), 0.0);
        double bonus = all == 0 ? 0 : SIBLINGS * vote / all * Math.min(1, vote / 1.5);
        rivals.add(new Rival(rival.candidate(), rival.score() + bonus));
      }
      rivals.sort(Comparator.comparingDouble(Rival::score).reversed());
      next.add(rivals);
    }
    return next;
  }
}
