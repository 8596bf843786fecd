package dev.gantrywright.names;

import dev.gantrywright.names.WordReader.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Finds in a comment what the parts of a list stand for. */
final class ListOrder {
  private static final Pattern COMMA = Pattern.compile(",");
  private static final Pattern SEMICOLON = Pattern.compile(";");
  private static final Pattern BAR = Pattern.compile("\\|");
  private static final Pattern SLASH = Pattern.compile(" / ");
  private static final Pattern WIDE = Pattern.compile("\\s{2,}|\t");
  private static final Pattern BLANK = Pattern.compile("\\s+");
  private static final Pattern SEPARATED = Pattern.compile(".*[,;|].*");

  private final WordReader words;
  private final DimsReader dims;

  ListOrder(WordReader words, DimsReader dims) {
    this.words = words;
    this.dims = dims;
  }

  /**
   * The axes of {@code count} parts, as the comment lists them in a row; null where it does not.
   */
  int[] axes(String comment, int count) {
    List<Word> list = words.comment(comment);
    for (int from = 0; from < list.size(); from++) {
      int bits = words.axes().of(list.get(from).text());
      if (count > 1 && Integer.bitCount(bits) == count && list.get(from).text().length() == count) {
        return spelled(list.get(from).text());
      }
      int[] run = run(list, from, count);
      if (run != null) {
        return run;
      }
    }
    return null;
  }

  private int[] spelled(String letters) {
    int[] axes = new int[letters.length()];
    for (int i = 0; i < axes.length; i++) {
      axes[i] = words.axes().of(letters.substring(i, i + 1));
    }
    return axes;
  }

  private int[] run(List<Word> list, int from, int count) {
    int[] axes = new int[count];
    int seen = 0;
    int at = from;
    for (int i = 0; i < count; i++) {
      while (i > 0 && at < list.size() && filler(list.get(at).text())) {
        at++;
      }
      if (at >= list.size()) {
        return null;
      }
      int bits = words.axes().of(list.get(at).text());
      if (bits == 0 && Axes.extruder(list.get(at).text())) {
        bits = Axes.E;
      }
      if (Integer.bitCount(bits) != 1 || (seen & bits) != 0) {
        return null;
      }
      seen |= bits;
      axes[i] = bits;
      at++;
    }
    boolean ends = at >= list.size() || words.axes().of(list.get(at).text()) == 0 || count >= 4;
    return ends ? axes : null;
  }

  private static boolean filler(String word) {
    return switch (word) {
      case "by", "and", "und", "et", "y", "e", "then", "dann", "puis", "axis", "achse" ->
          !word.equals("e") && !word.equals("y");
      default -> false;
    };
  }

  /** Whether the comment names the upper end before the lower; false where it does not say. */
  boolean upperFirst(String comment) {
    int low = -1;
    int high = -1;
    List<Word> list = words.comment(comment);
    for (int i = 0; i < list.size(); i++) {
      int end = dims.endOf(list.get(i));
      low = end == Dims.LOWER && low < 0 ? i : low;
      high = end == Dims.UPPER && high < 0 ? i : high;
    }
    return high >= 0 && low > high;
  }

  /** Whether the comment speaks of both ends. */
  boolean bothEnds(String comment) {
    boolean low = false;
    boolean high = false;
    for (Word word : words.comment(comment)) {
      int end = dims.endOf(word);
      low |= end == Dims.LOWER;
      high |= end == Dims.UPPER;
    }
    return low && high;
  }

  /** The heaters of {@code count} parts in the comment's order; null where it names too few. */
  int[] heaters(String comment, int count) {
    List<Integer> found = new ArrayList<>();
    for (Word word : words.comment(comment)) {
      int heater = dims.heaterOf(word);
      if (heater != 0 && !found.contains(heater)) {
        found.add(heater);
      }
    }
    return found.size() == count ? found.stream().mapToInt(Integer::intValue).toArray() : null;
  }

  /**
   * The comment cut into as many parts as the list has: at commas, semicolons or bars, or at spaces
   * where its last line has just that many words; null where it does not fit.
   */
  static List<String> parts(String comment, int count) {
    String text = comment.strip();
    for (String line : lastFirst(text)) {
      List<String> found = partsOfLine(line, inner(line), count);
      int colon = line.indexOf(':');
      if (found == null && colon >= 0) {
        String rest = line.substring(colon + 1);
        found = partsOfLine(rest, rest, count);
      }
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private static List<String> partsOfLine(String line, String body, int count) {
    for (Pattern mark : List.of(COMMA, SEMICOLON, BAR, SLASH)) {
      List<String> parts = cut(body, mark);
      if (parts.size() == count) {
        return parts;
      }
    }
    List<String> wide = cut(line.strip(), WIDE);
    if (wide.size() == count) {
      return wide;
    }
    List<String> words = count > 2 ? cut(body, BLANK) : List.of();
    return words.size() == count ? words : null;
  }

  private static List<String> lastFirst(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    java.util.Collections.reverse(lines);
    return lines;
  }

  private static String inner(String line) {
    String text = line.strip();
    int open = Math.max(text.indexOf('{'), text.indexOf('('));
    int close = Math.max(text.lastIndexOf('}'), text.lastIndexOf(')'));
    if (open >= 0 && close > open && SEPARATED.matcher(text.substring(open, close)).matches()) {
      return text.substring(open + 1, close);
    }
    int colon = text.indexOf(':');
    return colon >= 0 && text.indexOf(',', colon) > 0 ? text.substring(colon + 1) : text;
  }

  private static List<String> cut(String text, Pattern at) {
    List<String> parts = new ArrayList<>();
    for (String part : at.split(text)) {
      if (!part.isBlank()) {
        parts.add(part.strip());
      }
    }
    return parts;
  }
}
