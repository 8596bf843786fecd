package dev.gantrywright.prove;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which reported name is which axis end. What the user once said counts first; then spelling; a
 * guess is marked as one, to be asked about once.
 */
public final class EndstopNames {
  /**
   * @param end axis end such as {@code xMin}
   * @param sure false for a guess
   */
  public record Match(String end, boolean sure) {}

  /** A machine that sends rubbish must not fill the memory. */
  private static final int MOST_NAMES = 1_000;

  private final Collection<String> ends;
  private final Map<String, String> told = new HashMap<>();

  /** Answers given so far: the same few names come with every sample. */
  private final Map<String, Optional<Match>> known = new ConcurrentHashMap<>();

  /**
   * @param ends the axis ends that the profile knows, fitted or not
   * @param told reported name to axis end, as the user confirmed it
   */
  public EndstopNames(Collection<String> ends, Map<String, String> told) {
    this.ends = List.copyOf(ends);
    told.forEach((reported, end) -> this.told.put(reported.toLowerCase(Locale.ROOT), end));
  }

  /** The axis end that a reported name means, if any. */
  public Optional<Match> match(String reported) {
    if (known.size() > MOST_NAMES) {
      known.clear();
    }
    return known.computeIfAbsent(reported, this::find);
  }

  private Optional<Match> find(String reported) {
    String end = told.get(reported.toLowerCase(Locale.ROOT));
    if (end != null) {
      return Optional.of(new Match(end, true));
    }
    String key = key(reported);
    for (String candidate : ends) {
      if (key(candidate).equals(key)) {
        return Optional.of(new Match(candidate, true));
      }
    }
    List<String> sameAxis = new ArrayList<>();
    for (String candidate : ends) {
      if (words(candidate).get(0).equals(key)) {
        sameAxis.add(candidate);
      }
    }
    return sameAxis.size() == 1 ? Optional.of(new Match(sameAxis.get(0), false)) : Optional.empty();
  }

  /** The words of a name in alphabetical order, so that "min x" and "x_min" are the same. */
  private static String key(String name) {
    return String.join(" ", new TreeSet<>(words(name)));
  }

  private static List<String> words(String name) {
    String spaced =
        name.strip()
            .replaceAll("([a-z0-9])([A-Z])", "$1 $2")
            .replaceAll("(?i)(?<=[a-z0-9])\\s*-$", " min")
            .replaceAll("(?i)(?<=[a-z0-9])\\s*\\+$", " max")
            .toLowerCase(Locale.ROOT)
            .replaceAll("minimum", "min")
            .replaceAll("maximum", "max")
            .replaceAll("^([a-z]\\d?)(min|max)$", "$1 $2")
            .replaceAll("^(min|max)([a-z]\\d?)$", "$1 $2")
            .replaceAll("[^a-z0-9]+", " ")
            .strip();
    List<String> words = new ArrayList<>(List.of(spaced.split(" ")));
    if (words.size() > 1) {
      words.removeIf(
          w -> w.equals("endstop") || w.equals("stop") || w.equals("limit") || w.equals("switch"));
    }
    return words.isEmpty() ? List.of(spaced) : words;
  }
}
