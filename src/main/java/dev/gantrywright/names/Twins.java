package dev.gantrywright.names;

import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads run-together names by their twins: where {@code XQV}, {@code YQV} and {@code ZQV} stand in
 * one folder, the first letter is the axis, whatever the rest means; {@code HTH} and {@code BTH}
 * are hot end and bed.
 */
final class Twins {
  private static final String AXES = "xyze";
  private static final List<String> THERMAL =
      List.of("thermo", "temp", "tmin", "tmax", "watts", "protect", "heater");

  private final WordReader words;
  private final Set<String> names = new HashSet<>();
  private final Map<String, List<Word>> read = new HashMap<>();

  Twins(WordReader words, Iterable<String> all) {
    this.words = words;
    all.forEach(names::add);
  }

  /** The words of a name. */
  List<Word> read(String name) {
    List<Word> known = read.get(name);
    if (known == null) {
      known = words(name);
      read.put(name, known);
    }
    return known;
  }

  private List<Word> words(String name) {
    List<Word> plain = words.identifier(name);
    boolean axis =
        plain.stream()
            .anyMatch(word -> words.axes().of(word.text()) != 0 || Axes.extruder(word.text()));
    if (axis || name.length() < 2) {
      return plain;
    }
    for (int at : new int[] {0, name.length() - 1}) {
      if (axisTwin(name, at)) {
        return with(letter(name, at), rest(name, at));
      }
    }
    return heater(name, plain);
  }

  private boolean axisTwin(String name, int at) {
    int which = AXES.indexOf(Character.toLowerCase(name.charAt(at)));
    if (which < 0) {
      return false;
    }
    int found = 0;
    for (int i = 0; i < 3; i++) {
      found += i != which && names.contains(swapped(name, at, AXES.charAt(i))) ? 1 : 0;
    }
    return found >= (which == 3 ? 2 : 1) && name.length() > 1;
  }

  private static String swapped(String name, int at, char letter) {
    char like = Character.isUpperCase(name.charAt(at)) ? Character.toUpperCase(letter) : letter;
    return name.substring(0, at) + like + name.substring(at + 1);
  }

  private static Word letter(String name, int at) {
    return new Word(String.valueOf(Character.toLowerCase(name.charAt(at))), List.of());
  }

  private static String rest(String name, int at) {
    return at == 0 ? name.substring(1) : name.substring(0, at);
  }

  private List<Word> with(Word first, String rest) {
    List<Word> all = new ArrayList<>();
    all.add(first);
    all.addAll(words.identifier(rest));
    return all;
  }

  private List<Word> heater(String name, List<Word> plain) {
    char first = Character.toLowerCase(name.charAt(0));
    boolean twin =
        first == 'h' && names.contains(swapped(name, 0, 'b'))
            || first == 'b' && names.contains(swapped(name, 0, 'h'));
    boolean known = plain.stream().allMatch(word -> !word.hits().isEmpty());
    if (!twin || known) {
      return plain;
    }
    String which = first == 'h' ? "hotend" : "bed";
    Word word = new Word(which, List.of(new Hit(words.trade().concept(which), 1)));
    List<Word> apart = with(word, name.substring(1));
    boolean thermal =
        apart.stream()
            .skip(1)
            .flatMap(one -> one.hits().stream())
            .anyMatch(hit -> THERMAL.contains(words.trade().name(hit.concept())));
    return thermal ? apart : plain;
  }
}
