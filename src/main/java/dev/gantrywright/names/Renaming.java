package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A setting that stands under another name in a later release.
 *
 * @param confidence 0 to 1
 */
record Renaming(ReleaseSetting to, double confidence) {
  /** Less alike than this are two different settings. */
  private static final double LEAST = 0.45;

  /** What is left of the doubt where another pair exchanges the same words. */
  private static final double BACKED = 0.5;

  /** Pairs what is lost with what is new, all together, by words, value, comment and place. */
  static Map<ReleaseSetting, Renaming> of(List<ReleaseSetting> lost, List<ReleaseSetting> fresh) {
    Map<ReleaseSetting, Renaming> pairs = new HashMap<>();
    if (lost.isEmpty() || fresh.isEmpty()) {
      return pairs;
    }
    WordReader words = new WordReader(TradeWords.read(), Axes.usual());
    double[][] alike = new double[lost.size()][fresh.size()];
    for (int i = 0; i < lost.size(); i++) {
      for (int j = 0; j < fresh.size(); j++) {
        double share = alike(words, lost.get(i), fresh.get(j));
        alike[i][j] = share >= LEAST ? share : -1;
      }
    }
    int[] best = Assignment.best(alike);
    for (int i = 0; i < best.length; i++) {
      if (best[i] >= 0 && alike[i][best[i]] >= LEAST) {
        double next = 0;
        for (int j = 0; j < fresh.size(); j++) {
          next = j == best[i] ? next : Math.max(next, alike[i][j]);
        }
        double lead = Math.min(1, 0.75 + (alike[i][best[i]] - Math.max(next, LEAST - 0.2)));
        double confidence = Math.round(100 * alike[i][best[i]] * lead) / 100.0;
        pairs.put(lost.get(i), new Renaming(fresh.get(best[i]), confidence));
      }
    }
    return backed(words, pairs);
  }

  /**
   * A pair gains where another, surer one exchanges the same words: CEILING for LIMIT in the hot
   * end's name speaks for the bed's.
   */
  private static Map<ReleaseSetting, Renaming> backed(
      WordReader words, Map<ReleaseSetting, Renaming> pairs) {
    Map<ReleaseSetting, Renaming> out = new HashMap<>();
    pairs.forEach(
        (lost, renaming) -> {
          List<Set<String>> own = exchanged(words, lost, renaming.to());
          boolean like =
              renaming.confidence() < Confidence.SURE
                  && pairs.entrySet().stream()
                      .anyMatch(
                          other ->
                              other.getKey() != lost
                                  && other.getValue().confidence() >= Confidence.SURE
                                  && exchanged(words, other.getKey(), other.getValue().to())
                                      .equals(own));
          double doubt = (1 - renaming.confidence()) * (like ? BACKED : 1);
          double confidence = Math.round(100 * (1 - doubt)) / 100.0;
          out.put(lost, like ? new Renaming(renaming.to(), confidence) : renaming);
        });
    return out;
  }

  /** The words that only the old name has, and those that only the new one has. */
  private static List<Set<String>> exchanged(
      WordReader words, ReleaseSetting old, ReleaseSetting fresh) {
    Set<String> before = texts(words, old);
    Set<String> after = texts(words, fresh);
    Set<String> gone = new HashSet<>(before);
    gone.removeAll(after);
    after.removeAll(before);
    return List.of(gone, after);
  }

  private static Set<String> texts(WordReader words, ReleaseSetting setting) {
    Set<String> texts = new HashSet<>();
    words.identifier(setting.name()).forEach(word -> texts.add(word.text()));
    return texts;
  }

  /** How alike two settings are, 0 to 1. */
  static double alike(WordReader words, ReleaseSetting a, ReleaseSetting b) {
    if (a.section().isEmpty() != b.section().isEmpty()
        || !a.type().equals(b.type()) && !near(a, b)) {
      return 0;
    }
    if (axes(words, a.name()) != axes(words, b.name())) {
      return 0;
    }
    double name =
        Math.max(
            share(concepts(words, a.name()), concepts(words, b.name())),
            letters(a.name(), b.name()));
    double comment =
        a.comment().isBlank() || b.comment().isBlank()
            ? 0.4
            : share(plain(words, a.comment()), plain(words, b.comment()));
    double value =
        a.value().replaceAll("\\s+", "").equals(b.value().replaceAll("\\s+", ""))
            ? 1
            : a.type().equals(b.type()) ? 0.4 : 0;
    double place = a.file().equals(b.file()) ? 1 : 0.3;
    double unit = a.unit().equals(b.unit()) ? 1 : 0.5;
    return 0.4 * name + 0.28 * comment + 0.16 * value + 0.1 * place + 0.06 * unit;
  }

  private static boolean near(ReleaseSetting a, ReleaseSetting b) {
    String both = a.type() + "/" + b.type();
    return both.contains("number") && both.contains("yes or no")
        || both.contains("list") && a.type().startsWith("list") && b.type().startsWith("list");
  }

  private static int axes(WordReader words, String name) {
    int bits = 0;
    for (WordReader.Word word : words.identifier(name)) {
      bits |= words.axes().of(word.text());
    }
    return bits;
  }

  private static List<String> concepts(WordReader words, String name) {
    List<String> all = new ArrayList<>();
    for (WordReader.Word word : words.identifier(name)) {
      String best = word.text();
      double most = 0;
      for (TradeWords.Hit hit : word.hits()) {
        if (hit.strength() > most) {
          most = hit.strength();
          best = "#" + hit.concept();
        }
      }
      all.add(best);
    }
    return all;
  }

  private static List<String> plain(WordReader words, String text) {
    return words.comment(text).stream().map(WordReader.Word::text).toList();
  }

  private static double share(List<String> a, List<String> b) {
    Set<String> both = new HashSet<>(a);
    both.retainAll(new HashSet<>(b));
    Set<String> either = new HashSet<>(a);
    either.addAll(b);
    return either.isEmpty() ? 0 : (double) both.size() / either.size();
  }

  private static double letters(String a, String b) {
    return 1 - (double) NearMiss.distance(a, b) / Math.max(a.length(), b.length());
  }
}
