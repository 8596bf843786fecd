package dev.gantrywright.names;

import dev.gantrywright.names.LearnableField.Term;
import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Weighs one candidate against one field: words, shape, magnitude, unit, place. */
final class Scorer {
  /** Out of the question. */
  static final double NEVER = -99;

  /** What is heard less than this is chance. */
  private static final double LEAST_HEARD = 0.15;

  private static final double AGAINST_IN_NAME = 1.8;
  private static final double DISTRACTOR_IN_NAME = 1.6;
  private static final double OTHER_IN_NAME = 0.55;
  private static final double UNKNOWN_IN_NAME = 0.1;
  private static final double AGAINST_BESIDE = 0.35;
  private static final double MOST_BESIDE = 1.2;

  /** A field's words as numbers. */
  private record Prepared(
      int[][] terms, double[] weight, double[] miss, boolean[] explained, boolean[] against) {}

  /** What stands beside a candidate and is not in its name, and what its name costs any field. */
  private record Beside(int[] concepts, float[] heard) {}

  private final Axes axes;
  private final TradeWords trade;
  private final ValueShape shapes;
  private final Map<LearnableField, Prepared> prepared = new HashMap<>();
  private final Beside[] beside;
  private final int min;
  private final int max;
  private final int[] heaters;

  /**
   * A scorer.
   *
   * @param candidates how many will be scored
   */
  Scorer(WordReader words, ValueShape shapes, List<LearnableField> fields, int candidates) {
    this.axes = words.axes();
    this.trade = words.trade();
    this.shapes = shapes;
    this.beside = new Beside[candidates];
    this.min = this.trade.concept("min");
    this.max = this.trade.concept("max");
    this.heaters = Dims.HEATERS.stream().mapToInt(trade::concept).toArray();
    fields.forEach(field -> prepared.put(field, prepare(field)));
  }

  private Prepared prepare(LearnableField field) {
    int size = trade.size();
    boolean[] explained = new boolean[size];
    boolean[] against = new boolean[size];
    List<Term> terms = field.terms();
    int[][] concepts = new int[terms.size()][];
    double[] weight = new double[terms.size()];
    double[] miss = new double[terms.size()];
    for (int i = 0; i < concepts.length; i++) {
      concepts[i] = terms.get(i).any().stream().mapToInt(trade::concept).toArray();
      weight[i] = terms.get(i).w();
      miss[i] = terms.get(i).miss();
      for (int concept : concepts[i]) {
        explained[concept] = true;
      }
    }
    field.neutral().forEach(name -> explained[trade.concept(name)] = true);
    field.against().forEach(name -> against[trade.concept(name)] = true);
    if (field.perEnd()) {
      explained[min] = true;
      explained[max] = true;
    }
    if (field.perHeater()) {
      for (int heater : heaters) {
        explained[heater] = true;
      }
    }
    return new Prepared(concepts, weight, miss, explained, against);
  }

  /**
   * How well the words alone fit; a quick look that spares most pairs the rest.
   *
   * @return {@link #NEVER} where they speak of nothing that the field is about
   */
  double words(Candidate candidate, LearnableField field) {
    Prepared ready = prepared.get(field);
    double score = 0;
    double most = 0;
    for (int i = 0; i < ready.terms().length; i++) {
      double best = 0;
      for (int concept : ready.terms()[i]) {
        best = Math.max(best, candidate.all()[concept]);
      }
      most = Math.max(most, best);
      score += ready.weight()[i] * best - ready.miss()[i] * (1 - best);
    }
    return most < LEAST_HEARD ? NEVER : score;
  }

  /**
   * What speaks against it: words that another field would explain.
   *
   * @param at the candidate's place among all
   */
  double objections(Candidate candidate, LearnableField field, int at) {
    Prepared ready = prepared.get(field);
    double sum = 0;
    for (Word word : candidate.words()) {
      sum += objection(word, ready, field);
    }
    double loud = 0;
    if (beside[at] == null) {
      beside[at] = beside(candidate);
    }
    Beside here = beside[at];
    for (int i = 0; i < here.concepts().length; i++) {
      int concept = here.concepts()[i];
      if (!ready.explained()[concept]) {
        boolean counts = ready.against()[concept] || trade.distractor(concept);
        loud += counts ? here.heard()[i] * AGAINST_BESIDE : 0;
      }
    }
    return sum + Math.min(loud, MOST_BESIDE);
  }

  private Beside beside(Candidate candidate) {
    int[] concepts = new int[trade.size()];
    float[] heard = new float[trade.size()];
    int found = 0;
    for (int concept = 0; concept < concepts.length; concept++) {
      float here = candidate.all()[concept] - candidate.own()[concept];
      if (here > LEAST_HEARD) {
        concepts[found] = concept;
        heard[found++] = here;
      }
    }
    return new Beside(Arrays.copyOf(concepts, found), Arrays.copyOf(heard, found));
  }

  /** Whether a candidate speaks of a concept loudly enough to be considered for it. */
  static boolean heard(float strength) {
    return strength >= LEAST_HEARD;
  }

  /** The concepts of which a candidate must speak of one to be considered for a field. */
  int[] concepts(LearnableField field) {
    return Arrays.stream(prepared.get(field).terms()).flatMapToInt(Arrays::stream).toArray();
  }

  private double objection(Word word, Prepared ready, LearnableField field) {
    if (axes.of(word.text()) != 0
        || (field.perAxis() && Axes.extruder(word.text()))
        || Character.isDigit(word.text().charAt(0)) && word.hits().isEmpty()) {
      return 0;
    }
    if (word.hits().isEmpty()) {
      return UNKNOWN_IN_NAME;
    }
    double worst = 0;
    for (Hit hit : word.hits()) {
      if (ready.explained()[hit.concept()]) {
        return 0;
      }
      double cost =
          ready.against()[hit.concept()]
              ? AGAINST_IN_NAME
              : trade.distractor(hit.concept()) ? DISTRACTOR_IN_NAME : OTHER_IN_NAME;
      worst = Math.max(worst, cost * hit.strength());
    }
    return worst;
  }

  /** How well the value fits, and its unit. */
  double value(Candidate candidate, LearnableField field) {
    double fit = shapes.fit(candidate, field);
    if (!candidate.unit().isEmpty()) {
      if (field.unit() == null) {
        fit -= 0.4;
      } else {
        OptionalDouble factor = shapes.factor(field, candidate);
        fit += factor.isPresent() ? 0.8 : -1.8;
      }
    }
    if (candidate.dead()) {
      fit -= 0.3;
    }
    return candidate.on() || candidate.bareSwitch() ? fit : fit - 0.15;
  }

  /**
   * How well axis, end and heater fit.
   *
   * @param axis a bit of {@link Axes}, 0 where the field has none, {@link Axes#ALL} where one value
   *     serves all axes or ends
   */
  double place(Candidate candidate, LearnableField field, int axis, int end, int heater) {
    double best = NEVER;
    for (Dims way : candidate.dims()) {
      double score =
          axisPlace(way, axis, candidate.element() != null)
              + endPlace(way, field, end)
              + heaterPlace(way, heater);
      best = Math.max(best, score);
    }
    return best;
  }

  private static double axisPlace(Dims way, int axis, boolean part) {
    if (axis == 0) {
      return way.axes() == 0 ? 0 : -1.2 * way.axisStrength();
    }
    int named = Integer.bitCount(way.axes());
    if (axis == Axes.ALL) {
      if (part) {
        return NEVER;
      }
      return named == 0 ? 0 : named > 1 ? 0.4 : NEVER;
    }
    if ((way.axes() & axis) == 0 || named > 1) {
      return NEVER;
    }
    return 1.6 * way.axisStrength();
  }

  private static double endPlace(Dims way, LearnableField field, int end) {
    if (!field.perEnd() || end < 0) {
      return 0;
    }
    if (way.end() == 0) {
      return -0.9;
    }
    return way.end() == end ? 1.4 * way.endStrength() : way.endStrength() > 0.6 ? NEVER : -2.5;
  }

  private static double heaterPlace(Dims way, int heater) {
    if (heater == 0) {
      return 0;
    }
    if (way.heater() == 0) {
      return heater == 1 ? -1.4 : -2.6;
    }
    return way.heater() == heater
        ? 1.7 * way.heaterStrength()
        : way.heaterStrength() > 0.55 ? NEVER : -2.2;
  }
}
