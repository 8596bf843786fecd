package dev.gantrywright.names;

import dev.gantrywright.names.LearnableField.Term;
import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
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
  private static final double UNIT = 0.8;
  private static final double RATE_UNIT = 1.3;
  private static final double AXIS = 1.6;
  private static final double SEVERAL_AXES = 0.4;
  private static final double END = 1.4;
  private static final double HEATER = 1.7;

  /** A field's words as numbers. */
  record Prepared(
      int[][] terms,
      double[] weight,
      double[] miss,
      boolean[] explained,
      boolean[] against,
      boolean perAxis) {}

  /** A word as the objections look at it. */
  private record Heard(
      boolean axis, boolean extruder, boolean number, int[] concepts, double[] strengths) {}

  /** What stands beside a candidate and is not in its name, and what its name costs any field. */
  private record Beside(int[] concepts, float[] heard) {}

  private final Axes axes;
  private final TradeWords trade;
  private final ValueShape shapes;
  private final Map<LearnableField, Prepared> prepared = new HashMap<>();
  private final Beside[] beside;
  private final Heard[][] named;
  private final Map<Word, Heard> heard = new IdentityHashMap<>();
  private final boolean[] distractor;
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
    this.named = new Heard[candidates][];
    this.distractor = new boolean[trade.size()];
    for (int i = 0; i < distractor.length; i++) {
      distractor[i] = trade.distractor(i);
    }
    this.min = this.trade.concept("min");
    this.max = this.trade.concept("max");
    this.heaters = Dims.HEATERS.stream().mapToInt(trade::concept).toArray();
    fields.forEach(field -> prepared.put(field, prepare(field)));
  }

  Prepared prepared(LearnableField field) {
    return prepared.get(field);
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
    return new Prepared(concepts, weight, miss, explained, against, field.perAxis());
  }

  /**
   * How well the words alone fit; a quick look that spares most pairs the rest.
   *
   * @return {@link #NEVER} where they speak of nothing that the field is about
   */
  double words(Candidate candidate, Prepared ready) {
    float[] all = candidate.all();
    double score = 0;
    double most = 0;
    for (int i = 0; i < ready.terms().length; i++) {
      float best = 0;
      for (int concept : ready.terms()[i]) {
        best = Math.max(best, all[concept]);
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
  double objections(Candidate candidate, Prepared ready, int at) {
    if (beside[at] == null) {
      beside[at] = beside(candidate);
      named[at] = candidate.words().stream().map(this::heard).toArray(Heard[]::new);
    }
    double sum = 0;
    for (Heard word : named[at]) {
      sum += objection(word, ready);
    }
    double loud = 0;
    Beside here = beside[at];
    for (int i = 0; i < here.concepts().length; i++) {
      int concept = here.concepts()[i];
      if (!ready.explained()[concept]) {
        boolean counts = ready.against()[concept] || distractor[concept];
        loud += counts ? here.heard()[i] * AGAINST_BESIDE : 0;
      }
    }
    return sum + Math.min(loud, MOST_BESIDE);
  }

  private Beside beside(Candidate candidate) {
    float[] all = candidate.all();
    float[] own = candidate.own();
    int found = 0;
    for (int concept = 0; concept < all.length; concept++) {
      if (all[concept] - own[concept] > LEAST_HEARD) {
        found++;
      }
    }
    int[] concepts = new int[found];
    float[] heard = new float[found];
    for (int concept = 0, at = 0; at < found; concept++) {
      float here = all[concept] - own[concept];
      if (here > LEAST_HEARD) {
        concepts[at] = concept;
        heard[at++] = here;
      }
    }
    return new Beside(concepts, heard);
  }

  /** Whether a candidate speaks of a concept loudly enough to be considered for it. */
  static boolean heard(float strength) {
    return strength >= LEAST_HEARD;
  }

  /** The concepts of which a candidate must speak of one to be considered for a field. */
  int[] concepts(LearnableField field) {
    return Arrays.stream(prepared.get(field).terms()).flatMapToInt(Arrays::stream).toArray();
  }

  private Heard heard(Word word) {
    return heard.computeIfAbsent(
        word,
        key ->
            new Heard(
                axes.of(key.text()) != 0,
                Axes.extruder(key.text()),
                Character.isDigit(key.text().charAt(0)) && key.hits().isEmpty(),
                key.hits().stream().mapToInt(Hit::concept).toArray(),
                key.hits().stream().mapToDouble(Hit::strength).toArray()));
  }

  private double objection(Heard word, Prepared ready) {
    if (word.axis() || ready.perAxis() && word.extruder() || word.number()) {
      return 0;
    }
    if (word.concepts().length == 0) {
      return UNKNOWN_IN_NAME;
    }
    double worst = 0;
    for (int i = 0; i < word.concepts().length; i++) {
      int concept = word.concepts()[i];
      if (ready.explained()[concept]) {
        return 0;
      }
      double cost =
          ready.against()[concept]
              ? AGAINST_IN_NAME
              : distractor[concept] ? DISTRACTOR_IN_NAME : OTHER_IN_NAME;
      worst = Math.max(worst, cost * word.strengths()[i]);
    }
    return worst;
  }

  /**
   * How well the value fits, and its unit.
   *
   * @param at the candidate's place among all
   */
  double value(Candidate candidate, LearnableField field, int at) {
    double fit = shapes.fit(candidate, field, at);
    if (!candidate.unit().isEmpty()) {
      if (field.unit() == null) {
        fit -= 0.4;
      } else {
        OptionalDouble factor = shapes.factor(field, candidate);
        fit += factor.isPresent() ? unitFits(field.unit()) : -1.8;
      }
    }
    if (candidate.dead()) {
      fit -= 0.3;
    }
    return candidate.on() || candidate.bareSwitch() ? fit : fit - 0.15;
  }

  /** A rate, such as mm/s, is measured by few fields; many are measured in mm or °C. */
  private static double unitFits(String unit) {
    return unit.indexOf('/') < 0 ? UNIT : RATE_UNIT;
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

  /** The most that {@link #place} can give to a row. */
  static double mostPlace(FieldRow row) {
    double axis = row.axis() == 0 ? 0 : row.axis() == Axes.ALL ? SEVERAL_AXES : AXIS;
    double end = row.field().perEnd() && row.end() >= 0 ? END : 0;
    return axis + end + (row.heater() == 0 ? 0 : HEATER);
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
      return named == 0 ? 0 : named > 1 ? SEVERAL_AXES : NEVER;
    }
    if ((way.axes() & axis) == 0 || named > 1) {
      return NEVER;
    }
    return AXIS * way.axisStrength();
  }

  private static double endPlace(Dims way, LearnableField field, int end) {
    if (!field.perEnd() || end < 0) {
      return 0;
    }
    if (way.end() == 0) {
      return -0.9;
    }
    return way.end() == end ? END * way.endStrength() : way.endStrength() > 0.6 ? NEVER : -2.5;
  }

  private static double heaterPlace(Dims way, int heater) {
    if (heater == 0) {
      return 0;
    }
    if (way.heater() == 0) {
      return heater == 1 ? -1.4 : -2.6;
    }
    return way.heater() == heater
        ? HEATER * way.heaterStrength()
        : way.heaterStrength() > 0.55 ? NEVER : -2.2;
  }
}
