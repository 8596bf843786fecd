package dev.gantrywright.header;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a comment says of the value beside it: choices, unit, range.
 *
 * @param choices the values that it lists
 * @param unit the unit that it names, or empty
 * @param range the range that it gives, or null
 */
record CommentHints(List<String> choices, String unit, ValueRange range) {
  private static final int LONGEST = 4_000;
  private static final String DIGITS = "0123456789";
  private static final String NUMBER = "([-+]?\\d{1,12}(?:\\.\\d{1,9})?)";

  /** A unit of the trade, as a comment spells it. */
  private static final String UNIT =
      "(mm/s\\^?[2²]|mm/s/s|mm/min|mm/s|steps?/mm|steps?/s|mm³/s|mm|cm|µm|um|µs|us|ms|s"
          + "|(?:milli|micro)?seconds?|minutes?|°C|deg(?:rees)? ?C|degrees|celsius|°|mA|mV|A|V"
          + "|amps?|amperes?|milliamps?|volts?|kΩ|Ω|k?ohms?|kHz|MHz|Hz|hertz|bit/s|baud|bps|W"
          + "|watts?|%|percent|bytes?|KiB|kB|microsteps?|steps?|rpm|1/min)";

  private static final Pattern BRACKETED_UNIT = Pattern.compile("[(\\[]\\s*" + UNIT + "\\s*[)\\]]");
  private static final Pattern NAMED_UNIT =
      Pattern.compile("\\b(?:in|unit:?|units:?)\\s+" + UNIT + "(?![\\w/²^])");
  private static final Pattern LEADING_UNIT =
      Pattern.compile("^" + UNIT + "(?=$|[\\s,;:.)])(?!\\s+per\\b)");
  private static final Pattern COUNTED_UNIT =
      Pattern.compile("\\d\\s?" + UNIT + "(?=$|[\\s,;:.)\\]])(?!\\s+per\\b)");

  private static final Pattern BETWEEN =
      Pattern.compile(
          "(?i)\\b(?:between|from)\\s+" + NUMBER + "\\s*\\S{0,6}?\\s+(?:and|to)\\s+" + NUMBER);
  private static final Pattern DOTTED =
      Pattern.compile("(?<![\\d.])" + NUMBER + "\\s*(?:\\.{2,3}|…)\\s*" + NUMBER);
  private static final Pattern NAMED_RANGE =
      Pattern.compile(
          "(?i)\\b(?:range|allowed|valid|limits?)\\b[^\\d\\n+-]{0,20}"
              + NUMBER
              + "\\s*(?:\\.{2,3}|…|–|-|to)\\s*"
              + NUMBER);
  private static final Pattern MIN_MAX =
      Pattern.compile(
          "(?i)\\bmin(?:imum)?\\b[^\\d\\n+-]{0,6}"
              + NUMBER
              + "[^\\n]{0,12}?\\bmax(?:imum)?\\b[^\\d\\n+-]{0,6}"
              + NUMBER);
  private static final Pattern BRACKETED_RANGE =
      Pattern.compile("[(\\[]\\s*" + NUMBER + "\\s*(?:–|-|to)\\s*" + NUMBER + "\\s*[)\\]]");

  private static final String WORD = "[A-Za-z_0-9.+-]+|\"[^\"\\n]*\"|'[^'\\n]*'";
  private static final Pattern LISTED =
      Pattern.compile(
          "(?i)\\b(?:options?|choices?|one of|either|values?|choose(?: from)?|select|allowed|valid)"
              + "\\b[^\\n:,|]{0,24}?[:=]?\\s*[\\[({]?\\s*((?:"
              + WORD
              + ")(?:\\s*(?:,|\\||/|\\bor\\b)\\s*(?:or\\s+)?(?:"
              + WORD
              + "))++)"); // possessive: a long list must not go deep
  private static final Pattern BRACKET_LIST =
      Pattern.compile(
          ":?\\s*[\\[{<]\\s*((?:" + WORD + ")(?:\\s*[,|]\\s*(?:" + WORD + "))++)\\s*[\\]}>]");
  private static final Pattern MEANING =
      Pattern.compile("(?:^|[,;\\s(])(-?\\d{1,6}|[A-Z][A-Z0-9_]{2,})\\s*(?:=|:|-|–)\\s+?[A-Za-z]");

  private static final CommentHints NONE = new CommentHints(List.of(), "", null);

  static CommentHints of(String comment) {
    if (comment.isEmpty()) {
      return NONE;
    }
    String first = comment.length() > LONGEST ? comment.substring(0, LONGEST) : comment;
    String text = CommentText.narrowed(first);
    return new CommentHints(choices(text), unit(text), range(text));
  }

  private static String unit(String text) {
    for (Pattern pattern : List.of(BRACKETED_UNIT, NAMED_UNIT)) {
      boolean may =
          pattern == BRACKETED_UNIT
              ? has(text, "([")
              : text.contains("in") || text.contains("unit");
      Matcher m = may ? pattern.matcher(text) : null;
      if (m != null && m.find()) {
        return m.group(1);
      }
    }
    for (String line : text.split("\n")) {
      Matcher m = LEADING_UNIT.matcher(line.strip());
      if (m.find()) {
        return m.group(1);
      }
    }
    if (!has(text, DIGITS)) {
      return "";
    }
    Matcher m = COUNTED_UNIT.matcher(text);
    return m.find() ? m.group(1) : "";
  }

  /** Whether one of these characters stands in a text; a quick look that spares the patterns. */
  private static boolean has(String text, String wanted) {
    for (int i = 0; i < text.length(); i++) {
      if (wanted.indexOf(text.charAt(i)) >= 0) {
        return true;
      }
    }
    return false;
  }

  private static ValueRange range(String text) {
    if (!has(text, DIGITS)) {
      return null;
    }
    for (Pattern pattern : List.of(BETWEEN, DOTTED, NAMED_RANGE, MIN_MAX, BRACKETED_RANGE)) {
      Matcher m = pattern.matcher(text);
      if (m.find()) {
        double low = new BigDecimal(m.group(1)).doubleValue();
        double high = new BigDecimal(m.group(2)).doubleValue();
        if (low < high) {
          return new ValueRange(low, high);
        }
      }
    }
    return null;
  }

  private static List<String> choices(String text) {
    if (!has(text, ",|/=:-–") && !text.toLowerCase(Locale.ROOT).contains("or")) {
      return List.of();
    }
    for (Pattern pattern : List.of(BRACKET_LIST, LISTED)) {
      Matcher m = pattern.matcher(text);
      while (m.find()) {
        List<String> found = split(m.group(1));
        if (found.size() > 1) {
          return found;
        }
      }
    }
    Set<String> meanings = new LinkedHashSet<>();
    Matcher m = MEANING.matcher(text);
    while (m.find()) {
      meanings.add(m.group(1));
    }
    return meanings.size() > 1 ? List.copyOf(meanings) : List.of();
  }

  private static List<String> split(String list) {
    List<String> out = new ArrayList<>();
    for (String part : list.split("\\s*(?:,|\\||/|\\bor\\b)\\s*")) {
      String word = part.strip();
      if (word.endsWith(".") && !word.matches("\\d+\\.")) {
        word = word.substring(0, word.length() - 1);
      }
      if (!word.isEmpty() && !out.contains(word)) {
        out.add(word);
      }
    }
    return out;
  }
}
