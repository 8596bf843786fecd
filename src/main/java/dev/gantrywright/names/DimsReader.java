package dev.gantrywright.names;

import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
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

  /** What the words name, each strength times a factor. */
  Dims read(List<Word> words, double factor) {
    Dims dims = axes(words, factor);
    double low = strength(words, min);
    double high = strength(words, max);
    if (low != high) {
      dims = dims.end(low > high ? Dims.LOWER : Dims.UPPER, Math.max(low, high) * factor);
    } else if (low > 0) {
      int which = first(words, min) > first(words, max) ? Dims.LOWER : Dims.UPPER;
      dims = dims.end(which, low * factor * 0.5);
    }
    int heater = 0;
    double best = 0;
    for (int i = 0; i < heaters.length; i++) {
      double here = strength(words, heaters[i]);
      if (here > best) {
        best = here;
        heater = i + 1;
      }
    }
    return heater == 0 ? dims : dims.heater(heater, best * factor);
  }

  private Dims axes(List<Word> words, double factor) {
    int bits = 0;
    boolean extruder = false;
    int body = 0;
    for (Word word : words) {
      bits |= axes.of(word.text());
      extruder |= Axes.extruder(word.text());
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
    return strength(List.of(word), min) == 1 || strength(List.of(word), max) == 1;
  }

  /** Whether a word speaks of a heater more surely than of anything else. */
  boolean isHeater(Word word) {
    double best = 0;
    for (int heater : heaters) {
      best = Math.max(best, strength(List.of(word), heater));
    }
    double most = 0;
    for (Hit hit : word.hits()) {
      most = Math.max(most, hit.strength());
    }
    return best > 0 && best >= most;
  }

  /** The end that a word surely names; 0 where it names none. */
  int endOf(Word word) {
    double low = strength(List.of(word), min);
    double high = strength(List.of(word), max);
    return low == high ? 0 : low > high ? Dims.LOWER : Dims.UPPER;
  }

  /** The heater that a word names best; 0 where it names none. */
  int heaterOf(Word word) {
    int best = 0;
    double most = 0;
    for (int i = 0; i < heaters.length; i++) {
      double here = strength(List.of(word), heaters[i]);
      if (here > most) {
        most = here;
        best = i + 1;
      }
    }
    return best;
  }

  private static double strength(List<Word> words, int concept) {
    double best = 0;
    for (Word word : words) {
      for (Hit hit : word.hits()) {
        if (hit.concept() == concept) {
          best = Math.max(best, hit.strength());
        }
      }
    }
    return best;
  }

  private static int first(List<Word> words, int concept) {
    for (int i = 0; i < words.size(); i++) {
      if (strength(List.of(words.get(i)), concept) > 0) {
        return i;
      }
    }
    return -1;
  }
}
