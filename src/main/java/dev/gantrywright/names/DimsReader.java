package dev.gantrywright.names;

import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Finds axis, axis end and heater among words. */
final class DimsReader {
  private static final Map<String, Integer> BODY =
      Map.ofEntries(
          Map.entry("width", Axes.X),
          Map.entry("breite", Axes.X),
          Map.entry("largeur", Axes.X),
          Map.entry("ancho", Axes.X),
          Map.entry("larghezza", Axes.X),
          Map.entry("depth", Axes.Y),
          Map.entry("tiefe", Axes.Y),
          Map.entry("profondeur", Axes.Y),
          Map.entry("profundidad", Axes.Y),
          Map.entry("height", Axes.Z),
          Map.entry("hohe", Axes.Z),
          Map.entry("hoehe", Axes.Z),
          Map.entry("hauteur", Axes.Z),
          Map.entry("altura", Axes.Z));
  private static final double BODY_WORD = 0.7;
  private static final double EXTRUDER_WORD = 0.9;

  /** What one word says of places; {@code heaters} in the order of {@link Dims#HEATERS}. */
  private record Said(int axes, boolean extruder, double low, double high, double[] heaters) {}

  private final Map<Word, Said> said = new IdentityHashMap<>();
  private final Axes axes;
  private final int min;
  private final int max;
  private final int[] heaters;

  DimsReader(WordReader words) {
    TradeWords trade = words.trade();
    axes = words.axes();
    min = trade.concept("min");
    max = trade.concept("max");
    heaters = Dims.HEATERS.stream().mapToInt(trade::concept).toArray();
  }

  private Said said(Word word) {
    Said known = said.get(word);
    if (known == null) {
      double[] warm = new double[heaters.length];
      for (int i = 0; i < warm.length; i++) {
        warm[i] = strength(word, heaters[i]);
      }
      boolean extruder = Axes.extruder(word.text());
      known =
          new Said(axes.of(word.text()), extruder, strength(word, min), strength(word, max), warm);
      said.put(word, known);
    }
    return known;
  }

  /** What the words name, each strength times a factor. */
  Dims read(List<Word> words, double factor) {
    Dims dims = axes(words, factor);
    double low = 0;
    double high = 0;
    double[] warm = null;
    for (int i = 0; i < words.size(); i++) {
      Said here = said(words.get(i));
      low = Math.max(low, here.low());
      high = Math.max(high, here.high());
      for (int k = 0; k < heaters.length; k++) {
        if (here.heaters()[k] > 0) {
          warm = warm == null ? new double[heaters.length] : warm;
          warm[k] = Math.max(warm[k], here.heaters()[k]);
        }
      }
    }
    if (low != high) {
      dims = dims.end(low > high ? Dims.LOWER : Dims.UPPER, Math.max(low, high) * factor);
    } else if (low > 0) {
      int which = first(words, min) > first(words, max) ? Dims.LOWER : Dims.UPPER;
      dims = dims.end(which, low * factor * 0.5);
    }
    int heater = warm == null ? 0 : strongest(warm);
    return heater == 0 ? dims : dims.heater(heater, warm[heater - 1] * factor);
  }

  /** The first of the strongest, counted from 1; 0 where none has any strength. */
  private static int strongest(double[] strengths) {
    int which = 0;
    double best = 0;
    for (int i = 0; i < strengths.length; i++) {
      if (strengths[i] > best) {
        best = strengths[i];
        which = i + 1;
      }
    }
    return which;
  }

  private Dims axes(List<Word> words, double factor) {
    int bits = 0;
    boolean extruder = false;
    int body = 0;
    for (Word word : words) {
      Said here = said(word);
      bits |= here.axes();
      extruder |= here.extruder();
      body |= BODY.getOrDefault(word.text(), 0);
    }
    if (bits != 0) {
      return Dims.NONE.axis(bits, factor);
    }
    if (extruder) {
      return Dims.NONE.axis(Axes.E, EXTRUDER_WORD * factor);
    }
    return body != 0 ? Dims.NONE.axis(body, BODY_WORD * factor) : Dims.NONE;
  }

  boolean isEnd(Word word) {
    Said here = said(word);
    return here.low() == 1 || here.high() == 1;
  }

  /** Whether a word names an axis or an extruder. */
  boolean isAxis(Word word) {
    Said here = said(word);
    return here.axes() != 0 || here.extruder();
  }

  /** Whether a word speaks of a heater more surely than of anything else. */
  boolean isHeater(Word word) {
    double best = 0;
    for (double heater : said(word).heaters()) {
      best = Math.max(best, heater);
    }
    if (best == 0) {
      return false;
    }
    double most = 0;
    for (Hit hit : word.hits()) {
      most = Math.max(most, hit.strength());
    }
    return best >= most;
  }

  /** The end that a word surely names; 0 where it names none. */
  int endOf(Word word) {
    Said here = said(word);
    return here.low() == here.high() ? 0 : here.low() > here.high() ? Dims.LOWER : Dims.UPPER;
  }

  /** The heater that a word names best; 0 where it names none. */
  int heaterOf(Word word) {
    return strongest(said(word).heaters());
  }

  private static double strength(Word word, int concept) {
    double best = 0;
    for (Hit hit : word.hits()) {
      if (hit.concept() == concept) {
        best = Math.max(best, hit.strength());
      }
    }
    return best;
  }

  private static int first(List<Word> words, int concept) {
    for (int i = 0; i < words.size(); i++) {
      if (strength(words.get(i), concept) > 0) {
        return i;
      }
    }
    return -1;
  }
}
