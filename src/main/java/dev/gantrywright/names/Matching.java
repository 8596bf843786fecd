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

  /** The candidates that a field might take, and their scores but for the place. */
  private record Fitting(int[] at, double[] score, double[] extra, int count) {}

  private List<List<Rival>> scored() {
    Map<LearnableField, Fitting> byField = new HashMap<>();
    List<List<Rival>> all = new ArrayList<>();
    for (FieldRow row : rows) {
      LearnableField field = row.field();
      Fitting fitting = byField.get(field);
      if (fitting == null) {
        fitting = fitting(field, row.most(), mostPlace(field));
        byField.put(field, fitting);
      }
      all.add(rivals(row, fitting));
    }
    return all;
  }

  private List<Rival> rivals(FieldRow row, Fitting fitting) {
    double least = least(row.most());
    double mostPlace = Scorer.mostPlace(row);
    List<Rival> rivals = new ArrayList<>();
    for (int k = 0; k < fitting.count(); k++) {
      double score = fitting.score()[k];
      double extra = fitting.extra()[k];
      if (score + mostPlace + extra <= least) {
        continue;
      }
      Candidate candidate = index.candidates().get(fitting.at()[k]);
      double place = scorer.place(candidate, row.field(), row.axis(), row.end(), row.heater());
      if (place > Scorer.NEVER / 2 && score + place + extra > least) {
        rivals.add(new Rival(candidate, score + place + extra));
      }
    }
    rivals.sort(Comparator.comparingDouble(Rival::score).reversed());
    return List.copyOf(rivals.subList(0, Math.min(rivals.size(), MOST_RIVALS)));
  }

  /** What a rival must score, so that siblings could still lift it into a proposal. */
  private static double least(double most) {
    return most * LEAST_SHARE - SIBLINGS;
  }

  private double mostPlace(LearnableField field) {
    double most = 0;
    for (FieldRow row : rows) {
      most = row.field() == field ? Math.max(most, Scorer.mostPlace(row)) : most;
    }
    return most;
  }

  private Fitting fitting(LearnableField field, double most, double mostPlace) {
    double leastWords = -most * 0.35;
    double least = least(most);
    Map<String, Double> added = extra.of(field);
    Scorer.Prepared ready = scorer.prepared(field);
    BitSet open = index.speaking(scorer.concepts(field), added.keySet());
    int size = open.cardinality();
    int[] at = new int[size];
    double[] score = new double[size];
    double[] extras = new double[size];
    int count = 0;
    for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
      Candidate candidate = index.candidates().get(i);
      if (taken.taken(candidate, field)) {
        continue;
      }
      double words = scorer.words(candidate, ready);
      Double helps = added.isEmpty() ? null : added.get(candidate.macro());
      if (words < leastWords && helps == null) {
        continue;
      }
      double value = scorer.value(candidate, field, i);
      double fit = Math.max(words, -most) + value;
      double more = helps == null ? 0 : helps;
      boolean hopeless = fit + mostPlace + more <= least;
      if (hopeless || value <= ValueShape.IMPOSSIBLE + 1.5) {
        continue;
      }
      at[count] = i;
      score[count] = fit - scorer.objections(candidate, ready, i);
      extras[count++] = more;
    }
    return new Fitting(at, score, extras, count);
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
