package dev.gantrywright.ui.state;

import dev.gantrywright.prove.Trace;

/**
 * The user's mark in the trace.
 *
 * @param number as it stands in the picture and in the list
 * @param nanos its moment on the monotonic clock
 * @param text the user's words; may be empty
 */
public record TraceMark(int number, long nanos, String text) {
  /** As the table has it: a mark without words is named by its number. */
  public Trace.Mark kept() {
    return new Trace.Mark(nanos, text.isBlank() ? Texts.of("trace.mark", number) : text.strip());
  }

  TraceMark named(String words) {
    return new TraceMark(number, nanos, words);
  }
}
