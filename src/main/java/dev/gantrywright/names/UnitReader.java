package dev.gantrywright.names;

import dev.gantrywright.names.WordReader.Word;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the unit that a comment or an identifier names. */
final class UnitReader {
  /**
   * A unit's spelling.
   *
   * @param needs texts of which one must stand in what is read; looking for them spares most texts
   *     the pattern
   */
  private record Rule(Pattern pattern, String unit, String[] needs) {
    boolean possible(String text) {
      for (String need : needs) {
        if (text.contains(need)) {
          return true;
        }
      }
      return needs.length == 0;
    }
  }

  /**
   * A single second is more often the one behind the first, as in "second port": it counts as the
   * unit behind a number, and where it stands alone.
   */
  private static final String ONE_SECOND = "(second|seconde|segundo|secondo)\\b";

  private static final List<Rule> COMMENT =
      List.of(
          rule(
              "(micro)?(steps?|ticks|pulses?|counts?|pas|schritte|pasos|passi)\\s*(/|per|pro|par|por|a|al|je)\\s*mm",
              "steps/mm",
              "mm"),
          rule(
              "mm\\s*/\\s*s(ec)?\\s*(/\\s*s(ec)?\\b|²|\\^\\s*2|2\\b|\\*\\*2)|mm\\s*/\\s*\\(?s\\*s|mm/sq|mm\\s+per\\s+(s|sec|second)\\s+(squared|per\\s+(s|sec|second))\\b",
              "mm/s²",
              "mm"),
          rule("m\\s*/\\s*s(²|\\^2|2\\b)", "m/s²", "/"),
          rule(
              "mm\\s*(/|per|pro|par|por)\\s*(min|minute|minuto)\\b|mm/m\\b|mmpm\\b",
              "mm/min",
              "mm"),
          rule(
              "mm\\s*(/|per|pro|par|por)\\s*(s|sec|second|sekunde|seconde|segundo)\\b|mmps\\b",
              "mm/s",
              "mm"),
          rule("\\bm\\s*/\\s*min\\b", "m/min", "min"),
          rule(
              "(bits?|baud)\\s*(/|per|par|por|pro)\\s*(s|sec|second|seconde|segundo|sekunde)|\\bbps\\b|\\bbaud\\b",
              "bit/s",
              "bit",
              "baud",
              "bps"),
          rule("\\bma\\b|\\bmilliamp", "mA", "ma", "milliamp"),
          rule("\\bmv\\b|\\bmillivolt", "mV", "mv", "millivolt"),
          rule("\\bmilliohms?\\b|\\bmohms?\\b|mω", "mΩ", "ohm", "mω"),
          rule("\\bkohms?\\b|kω|\\bkilohms?\\b|\\bkiloohms?\\b", "kΩ", "ohm", "kω"),
          rule("\\bohms?\\b|ω", "Ω", "ohm", "ω"),
          rule(
              "°\\s*c\\b|\\bdeg\\.?\\s*c\\b|\\bdegrees?\\b(?! ?(?:motor|step|a step|per|rotation))|\\bcelsius\\b|\\bgrad\\b|\\bdegres\\b|\\bgrados\\b|\\bgradi\\b|\\bdegc\\b|º\\s*c\\b",
              "°C",
              "°",
              "º",
              "deg",
              "celsius",
              "grad"),
          rule("\\bamp(s|eres?)?\\b", "A", "amp"),
          rule("\\bvolts?\\b|\\bvoltios?\\b", "V", "volt", "voltio"),
          rule("\\bwatts?\\b", "W", "watt"),
          rule("\\bmm\\b|\\bmillimet|\\bmilimet", "mm", "mm", "mil"),
          rule(
              "\\bpercent\\b|%|\\bpour cent\\b|\\bprozent\\b", "%", "percent", "%", "cent", "zent"),
          rule(
              "\\bms\\b|\\bmilliseconds?\\b|\\bus\\b|\\bmicroseconds?\\b|\\bseconds\\b|\\bsekunden?\\b|\\bsecondes\\b|\\bsegundos\\b|\\bsecondi\\b|\\d\\s*"
                  + ONE_SECOND
                  + "|(^|[(\\[,;:]|\\bin|\\bunit)\\s*"
                  + ONE_SECOND
                  + "\\s*($|[)\\].;\\n])",
              "s",
              "ms",
              "milli",
              "us",
              "micro",
              "sec",
              "seg",
              "sek"));

  /** Words of which a name must hold one before its unit is looked for. */
  private static final java.util.Set<String> NAME_HINTS =
      java.util.Set.of(
          "mm",
          "ma",
          "mv",
          "mmpm",
          "mms",
          "mmps",
          "mmpss",
          "mmmin",
          "min",
          "amps",
          "amp",
          "milliamps",
          "milliamp",
          "mamp",
          "mamps",
          "milliamperes",
          "milliampere",
          "amperes",
          "ampere",
          "volts",
          "volt",
          "millivolts",
          "millivolt",
          "ohms",
          "ohm",
          "kohm",
          "kohms",
          "milliohm",
          "milliohms",
          "mohm",
          "mohms",
          "watt",
          "watts",
          "percent",
          "pct",
          "microseconds",
          "microsecond",
          "seconds",
          "secs",
          "sec",
          "millis",
          "msec",
          "bps",
          "baud",
          "celsius",
          "degc",
          "bits",
          "bits per second",
          "bit per second",
          "permm",
          "per mm",
          "steps mm");

  /** One capital letter as a unit: behind a number, a comma, a bracket or "in", and at an end. */
  private static final Pattern LETTER =
      Pattern.compile(
          "(?:^\\s*|[,;:(\\[]\\s*|\\b(?:in|en|unit)\\s+|\\d\\s?)([AVW])(?=\\s*(?:$|[,;.)\\]\\n]|RMS|rms|eff|peak))",
          Pattern.MULTILINE);

  private static final List<Rule> NAME =
      List.of(
          rule("mm per min(ute)?\\b|mm min(ute)?\\b|mmpm\\b|mm m\\b|per min\\b|mmmin", "mm/min"),
          rule("mm s2|mm per s2|mm per sec2|mmpss|mm per s 2|mm ss|mm per second squared", "mm/s²"),
          rule(
              "mm per s\\b|mm s\\b|mmps\\b|mm per sec\\b|mms\\b|mm sec\\b|mm per second\\b|mm second\\b",
              "mm/s"),
          rule("steps per mm|steps mm|per mm", "steps/mm"),
          rule("\\bma\\b|milliamps?|milliamperes?|\\bmamps?\\b", "mA"),
          rule("\\bmv\\b|millivolts?", "mV"),
          rule("milliohms?|\\bmohm\\b", "mΩ"),
          rule("\\bkohms?\\b", "kΩ"),
          rule("\\bamps?\\b|\\bamperes?\\b", "A"),
          rule("\\bohms?\\b", "Ω"),
          rule("\\bvolts?\\b", "V"),
          rule("\\bwatts?\\b", "W"),
          rule("\\bpercent\\b|\\bpct\\b", "%"),
          rule("\\bbits? per s(ec(ond)?)?\\b", "bit/s"),
          rule("\\bmicroseconds?\\b|\\bseconds\\b|\\bsecs?\\b|\\bmillis\\b|\\bmsec\\b", "s"),
          rule("\\bbps\\b|\\bbaud\\b", "bit/s"),
          rule("\\bcelsius\\b|\\bdegc\\b", "°C"),
          rule("\\bmm$|\\bmm\\b", "mm"));

  private UnitReader() {}

  private static Rule rule(String pattern, String unit, String... needs) {
    return new Rule(Pattern.compile(pattern), unit, needs);
  }

  /** The unit that a comment names first; empty where it names none. */
  static String ofComment(String comment) {
    if (comment.isEmpty()) {
      return "";
    }
    String text = Folded.text(comment).replace('Ω', 'ω').replace('μ', 'u');
    String best = "";
    int at = Integer.MAX_VALUE;
    for (Rule rule : COMMENT) {
      if (!rule.possible(text)) {
        continue;
      }
      Matcher found = rule.pattern().matcher(text);
      if (found.find() && found.start() < at) {
        at = found.start();
        best = rule.unit();
      }
    }
    if (!letter(comment)) {
      return best;
    }
    Matcher letter = LETTER.matcher(comment);
    return letter.find() && letter.start() < at ? letter.group(1) : best;
  }

  /** Whether a unit's capital stands where no letter follows it. */
  private static boolean letter(String comment) {
    for (int i = 0; i < comment.length(); i++) {
      char c = comment.charAt(i);
      boolean unit = c == 'A' || c == 'V' || c == 'W';
      if (unit && (i == 0 || !Character.isLetter(comment.charAt(i - 1)))) {
        return true;
      }
    }
    return false;
  }

  /** The unit that an identifier's words name; empty where they name none. */
  static String ofName(List<Word> words) {
    boolean hint = false;
    for (Word word : words) {
      hint |= NAME_HINTS.contains(word.text());
    }
    if (!hint) {
      return "";
    }
    StringBuilder joined = new StringBuilder();
    for (Word word : words) {
      joined.append(joined.length() == 0 ? "" : " ").append(word.text());
    }
    for (Rule rule : NAME) {
      if (rule.pattern().matcher(joined).find()) {
        return rule.unit();
      }
    }
    return "";
  }
}
