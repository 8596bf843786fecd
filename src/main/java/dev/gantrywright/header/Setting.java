package dev.gantrywright.header;

import java.util.List;

/**
 * One {@code #define} of a header, switched on or commented out.
 *
 * @param file path relative to the folder, with {@code /}
 * @param line line of the directive, counted from 1
 * @param name macro name
 * @param kind value, flag or function-like
 * @param on false for a commented-out {@code #define}
 * @param value text as the preprocessor takes it: a comment is one space, splices are gone,
 *     trimmed; empty for a flag
 * @param comment the comment block above and the comment behind, without comment marks; lines
 *     separated by {@code \n}; empty if there is none
 * @param section the heading that the setting stands under, or empty
 * @param choices the values that the comment lists, in its order; empty if it lists none
 * @param unit the unit that the comment names, as it spells it, or empty
 * @param range the range that the comment gives, or null
 * @param state whether the place where it stands is seen by the compiler
 * @param reason the chain of conditions that explains the state; empty when nothing stands above it
 * @param lineSpan the whole directive from the start of its first line to the end of its last,
 *     without the line end
 * @param nameSpan the name
 * @param valueSpan the value from its first to its last token; empty, behind the name, for a flag
 * @param elements the outer elements of a brace list, empty for any other value
 */
public record Setting(
    String file,
    int line,
    String name,
    Kind kind,
    boolean on,
    String value,
    String comment,
    String section,
    List<String> choices,
    String unit,
    ValueRange range,
    State state,
    String reason,
    Span lineSpan,
    Span nameSpan,
    Span valueSpan,
    List<Span> elements) {

  /** What the directive defines. */
  public enum Kind {
    /** An object-like macro with a replacement. */
    VALUE,
    /** An object-like macro without one. */
    FLAG,
    /** A function-like macro; its value is the replacement. */
    FUNCTION
  }

  public Setting {
    choices = List.copyOf(choices);
    elements = List.copyOf(elements);
  }

  /** Whether the compiler takes this definition: switched on, on a line that it sees. */
  public boolean live() {
    return on && state == State.LIVE;
  }
}
