package dev.gantrywright.machine;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;

/** Why a text is no JSON, in words for whoever typed it rather than for whoever wrote a parser. */
public final class JsonFault {
  private static final Pattern CHARACTER = Pattern.compile("Unexpected character \\('(.)'");
  private static final Pattern WORD = Pattern.compile("Unrecognized token '([^']{1,40})'?");

  private JsonFault() {}

  /** One sentence without its place: what stands there, and what to look for. */
  public static String plain(JacksonException wrong) {
    String text = wrong.getOriginalMessage();
    if (text == null) {
      return "this is no JSON";
    }
    if (text.startsWith("Unexpected end-of-input")) {
      return "the file ends too soon: a } or ] or a quote is missing, or only a part was saved";
    }
    Matcher word = WORD.matcher(text);
    if (word.find()) {
      return "'"
          + word.group(1)
          + "' does not belong here: a text stands in quotes, a truth value is true or false";
    }
    Matcher character = CHARACTER.matcher(text);
    if (character.find()) {
      return "'"
          + character.group(1)
          + "' does not belong here: look for a comma, a quote or a bracket that is missing or too"
          + " many";
    }
    if (text.contains("CTRL-CHAR") || text.contains("UTF-8")) {
      return "this is no text that belongs into JSON; was another kind of file given?";
    }
    return text.lines().findFirst().orElse("this is no JSON");
  }
}
