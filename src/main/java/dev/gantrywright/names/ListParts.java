package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parts of a value that holds several: a brace list (nested ones flattened), a bare or
 * parenthesised list with commas, or a packed string such as {@code "200x200x180"}.
 *
 * @param form how the parts are held together
 * @param parts in their order
 */
public record ListParts(Form form, List<Part> parts) {
  /** How the parts of a value are held together. */
  public enum Form {
    /** One value. */
    SINGLE,
    /** {@code { a, b }}, also nested. */
    BRACES,
    /** {@code a, b} or {@code (a, b)} or {@code LIST(a, b)}. */
    COMMAS,
    /** {@code "200x200x180"}. */
    PACKED
  }

  /**
   * One part.
   *
   * @param start offset of its text in the value
   * @param end exclusive
   * @param text without designator, comments and space around
   * @param designator {@code .steps} or {@code [X]}, without the {@code =}; empty where there is
   *     none
   * @param note the comments around it inside the list, in one text
   * @param row index of the inner list that it stands in, 0 where lists are not nested
   * @param column index within that inner list
   * @param depth how many lists are open around it
   */
  public record Part(
      int start,
      int end,
      String text,
      String designator,
      String note,
      int row,
      int column,
      int depth) {}

  private static final Pattern PACKED =
      Pattern.compile(
          "\"\\s*([-+]?\\d+(\\.\\d+)?\\s*[a-z]*\\s*[xX*,;:/| ]\\s*)+[-+]?\\d+(\\.\\d+)?\\s*[a-z]*\\s*\"");
  private static final Pattern NUMBER = Pattern.compile("(?<![\\d.])[-+]?\\d+(\\.\\d+)?");
  private static final Pattern CALL = Pattern.compile("[A-Za-z_]\\w*\\s*\\(");
  private static final ListParts ONE = new ListParts(Form.SINGLE, List.of());

  public ListParts {
    parts = List.copyOf(parts);
  }

  /** The parts of a value's text, which may hold comments. */
  public static ListParts of(String value) {
    String text = value.strip();
    if (text.isEmpty()) {
      return ONE;
    }
    int lead = value.indexOf(text);
    if (text.startsWith("{")) {
      return new ListParts(Form.BRACES, ListScan.leaves(value, lead));
    }
    if (text.startsWith("\"")) {
      return PACKED.matcher(text).matches() ? packed(value) : ONE;
    }
    if (text.indexOf(',') < 0) {
      return ONE;
    }
    Matcher call = CALL.matcher(text);
    int from = lead + (call.lookingAt() ? call.end() : text.startsWith("(") ? 1 : 0);
    if (from > lead && ListScan.close(value, from - 1) != lead + text.length() - 1) {
      return ONE;
    }
    int to = from > lead ? lead + text.length() - 1 : lead + text.length();
    List<Part> parts = ListScan.flat(value, from, to);
    return parts.size() < 2 ? ONE : new ListParts(Form.COMMAS, parts);
  }

  private static ListParts packed(String value) {
    List<Part> parts = new ArrayList<>();
    Matcher number = NUMBER.matcher(value);
    while (number.find()) {
      int index = parts.size();
      parts.add(new Part(number.start(), number.end(), number.group(), "", "", 0, index, 1));
    }
    return parts.size() < 2 ? ONE : new ListParts(Form.PACKED, parts);
  }

  /** Whether the value holds several. */
  public boolean several() {
    return form != Form.SINGLE && !parts.isEmpty();
  }

  /** Whether its parts stand in inner lists. */
  public boolean nested() {
    return form == Form.BRACES && parts.stream().anyMatch(part -> part.depth() > 1);
  }

  /** The value with the text of one part replaced; everything else stays as it is. */
  public static String with(String value, Part part, String text) {
    return value.substring(0, part.start()) + text + value.substring(part.end());
  }
}
