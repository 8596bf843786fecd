package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * One replacement of a range of bytes.
 *
 * @param span the bytes that go; empty to insert
 * @param replacement the bytes that come; empty to delete
 */
public record Edit(Span span, byte[] replacement) {
  public Edit {
    replacement = replacement.clone();
  }

  @Override
  public byte[] replacement() {
    return replacement.clone();
  }

  int growth() {
    return replacement.length - span.length();
  }

  /** The edit as a refusal names it. */
  String words() {
    String text = new String(replacement, StandardCharsets.ISO_8859_1);
    return "\"" + text + "\" for bytes " + span.start() + " to " + span.end();
  }

  /** Whether the two cannot be made independently: they overlap or touch. */
  boolean touches(Edit other) {
    return span.start() <= other.span.end() && other.span.start() <= span.end();
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Edit e && span.equals(e.span) && Arrays.equals(replacement, e.replacement);
  }

  @Override
  public int hashCode() {
    return 31 * span.hashCode() + Arrays.hashCode(replacement);
  }

  @Override
  public String toString() {
    return span + " -> " + new String(replacement, StandardCharsets.ISO_8859_1);
  }
}
