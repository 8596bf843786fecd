package dev.gantrywright.names;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/** The words of the trade and the concepts that they speak of, from {@code trade-words.json}. */
final class TradeWords {
  /** A concept that a word speaks of, and how surely, 0 to 1. */
  record Hit(int concept, double strength) {}

  /** Several words in a row that speak of one concept. */
  record Phrase(List<String> words, int concept) {}

  private record Entry(
      List<String> words, List<String> weak, List<String> phrases, Boolean distractor) {}

  private record Table(String source, Map<String, Entry> concepts) {}

  private static final double WEAK = 0.5;

  private final List<String> names = new ArrayList<>();
  private final List<Boolean> distractors = new ArrayList<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Map<String, List<Hit>> words = new HashMap<>();
  private final Map<String, List<Phrase>> phrases = new HashMap<>();

  private TradeWords(Table table) {
    table.concepts().forEach(this::add);
    phrases.values().forEach(list -> list.sort((a, b) -> b.words().size() - a.words().size()));
  }

  /** Reads the table that ships with the program. */
  static TradeWords read() {
    try (InputStream in = TradeWords.class.getResourceAsStream("trade-words.json")) {
      return new TradeWords(JsonMapper.shared().readValue(in, Table.class));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private void add(String name, Entry entry) {
    int concept = names.size();
    names.add(name);
    numbers.put(name, concept);
    distractors.add(Boolean.TRUE.equals(entry.distractor()));
    Ordered.list(entry.words()).forEach(word -> word(word, concept, 1));
    Ordered.list(entry.weak()).forEach(word -> word(word, concept, WEAK));
    for (String phrase : Ordered.list(entry.phrases())) {
      List<String> parts = List.of(phrase.split(" "));
      phrases
          .computeIfAbsent(parts.get(0), key -> new ArrayList<>())
          .add(new Phrase(parts, concept));
    }
  }

  private void word(String word, int concept, double strength) {
    List<Hit> hits = words.computeIfAbsent(word, key -> new ArrayList<>());
    if (hits.stream().noneMatch(hit -> hit.concept() == concept)) {
      hits.add(new Hit(concept, strength));
    }
  }

  int size() {
    return names.size();
  }

  /** The number of a concept; an unknown name is a fault in the data files. */
  int concept(String name) {
    Integer number = numbers.get(name);
    if (number == null) {
      throw new IllegalArgumentException("trade-words.json has no concept " + name);
    }
    return number;
  }

  String name(int concept) {
    return names.get(concept);
  }

  /** Whether no profile field carries it, so that it speaks against every field. */
  boolean distractor(int concept) {
    return distractors.get(concept);
  }

  /** What a lower-case word without accents speaks of; empty where it is unknown. */
  List<Hit> exactly(String word) {
    return words.getOrDefault(word, List.of());
  }

  /** The phrases that begin with a word, longest first. */
  List<Phrase> phrasesFrom(String word) {
    return phrases.getOrDefault(word, List.of());
  }
}
