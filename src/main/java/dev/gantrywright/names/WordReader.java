package dev.gantrywright.names;

import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.TradeWords.Phrase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads words as concepts; remembers each word, so it is made for one run of learning. */
final class WordReader {
  /** A word (or a phrase) and the concepts it speaks of. */
  record Word(String text, List<Hit> hits) {}

  private static final List<String> ENDINGS =
      List.of("s", "es", "e", "n", "en", "er", "ed", "d", "ing", "al", "a", "o");
  private static final double INFLECTED = 0.9;
  private static final double INSIDE = 0.6;
  private static final int SHORTEST_STEM = 3;
  private static final int MOST_PIECES = 4;

  private final TradeWords trade;
  private final Axes axes;
  private final Map<String, List<Word>> pieces = new HashMap<>();
  private final Map<String, Word> inside = new HashMap<>();
  private final Map<String, List<Word>> comments = new HashMap<>();
  private final Map<String, List<Word>> identifiers = new HashMap<>();

  WordReader(TradeWords trade, Axes axes) {
    this.trade = trade;
    this.axes = axes;
  }

  TradeWords trade() {
    return trade;
  }

  Axes axes() {
    return axes;
  }

  /** An identifier's words, run-together ones taken apart, phrases joined. */
  List<Word> identifier(String name) {
    List<Word> known = identifiers.get(name);
    if (known == null) {
      known = readIdentifier(name);
      identifiers.put(name, known);
    }
    return known;
  }

  private List<Word> readIdentifier(String name) {
    List<Word> words = new ArrayList<>();
    for (String word : Folded.identifier(name)) {
      words.addAll(pieces.computeIfAbsent(word, this::takenApart));
    }
    return joined(words);
  }

  /** A comment's words, phrases joined. */
  List<Word> comment(String text) {
    return comments.computeIfAbsent(text, this::read);
  }

  private List<Word> read(String text) {
    List<Word> words = new ArrayList<>();
    for (String word : Folded.words(text)) {
      words.add(inside.computeIfAbsent(word, key -> new Word(key, hitsInComment(key))));
    }
    return joined(words);
  }

  private List<Hit> hits(String word) {
    List<Hit> hits = trade.exactly(word);
    if (!hits.isEmpty()) {
      return hits;
    }
    for (String ending : ENDINGS) {
      int stem = word.length() - ending.length();
      if (stem >= SHORTEST_STEM && word.endsWith(ending)) {
        List<Hit> stemmed = trade.exactly(word.substring(0, stem));
        if (!stemmed.isEmpty()) {
          return weaker(stemmed, INFLECTED);
        }
      }
    }
    return List.of();
  }

  private static List<Hit> weaker(List<Hit> hits, double factor) {
    return hits.stream().map(hit -> new Hit(hit.concept(), hit.strength() * factor)).toList();
  }

  /** Compound nouns: a long known word within a longer one still speaks. */
  private List<Hit> hitsInComment(String word) {
    List<Hit> hits = hits(word);
    if (!hits.isEmpty() || word.length() < 8) {
      return hits;
    }
    List<Hit> found = new ArrayList<>();
    for (int from = 0; from < word.length(); from++) {
      for (int to = word.length(); to - from >= 4; to--) {
        List<Hit> part = trade.exactly(word.substring(from, to));
        if (!part.isEmpty() && (from == 0 || to == word.length())) {
          found.addAll(weaker(part.stream().filter(hit -> hit.strength() == 1).toList(), INSIDE));
          break;
        }
      }
    }
    return found;
  }

  private List<Word> takenApart(String word) {
    List<Hit> known = hits(word);
    if (!known.isEmpty() || word.length() < 3 || axes.of(word) != 0) {
      return List.of(new Word(word, known));
    }
    List<String> parts = parts(word, MOST_PIECES, true);
    if (parts == null) {
      return List.of(new Word(word, word.length() >= 8 ? hitsInComment(word) : List.of()));
    }
    return parts.stream().map(part -> new Word(part, hits(part))).toList();
  }

  /** The fewest known words that a word is made of; null where it is not made of such. */
  private List<String> parts(String word, int most, boolean first) {
    if (word.isEmpty()) {
      return new ArrayList<>();
    }
    if (most == 0) {
      return null;
    }
    List<String> best = null;
    for (int end = word.length(); end >= 1; end--) {
      String head = word.substring(0, end);
      boolean last = end == word.length();
      if (!piece(head, first, last)) {
        continue;
      }
      List<String> rest = parts(word.substring(end), most - 1, false);
      if (rest != null && (best == null || rest.size() + 1 < best.size())) {
        best = new ArrayList<>(rest);
        best.add(0, head);
      }
    }
    return best;
  }

  private boolean piece(String text, boolean first, boolean last) {
    if (axes.of(text) != 0) {
      return (first || last) && text.length() <= 4 && !(first && last);
    }
    if (text.length() < 2) {
      return false;
    }
    List<Hit> hits = hits(text);
    boolean strong = hits.stream().anyMatch(hit -> hit.strength() >= 1);
    return strong || (text.length() >= 3 && !hits.isEmpty());
  }

  private List<Word> joined(List<Word> words) {
    List<Word> out = new ArrayList<>(words.size());
    for (int i = 0; i < words.size(); i++) {
      Phrase phrase = phraseAt(words, i);
      if (phrase == null) {
        out.add(words.get(i));
      } else {
        String text = String.join(" ", phrase.words());
        out.add(new Word(text, List.of(new Hit(phrase.concept(), 1))));
        i += phrase.words().size() - 1;
      }
    }
    return out;
  }

  private Phrase phraseAt(List<Word> words, int at) {
    for (Phrase phrase : trade.phrasesFrom(words.get(at).text())) {
      int size = phrase.words().size();
      boolean matches = at + size <= words.size();
      for (int k = 1; matches && k < size; k++) {
        matches = phrase.words().get(k).equals(words.get(at + k).text());
      }
      if (matches) {
        return phrase;
      }
    }
    return null;
  }
}
