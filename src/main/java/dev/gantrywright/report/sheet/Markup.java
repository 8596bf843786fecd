package dev.gantrywright.report.sheet;

/** Text that is HTML and well-formed XML at once, written piece by piece. */
final class Markup {
  private final StringBuilder out = new StringBuilder();

  /** Opens an element; attributes come as name and value in turn. */
  Markup open(String element, String... attributes) {
    tag(element, attributes);
    out.append('>');
    return this;
  }

  Markup close(String element) {
    out.append("</").append(element).append('>');
    return this;
  }

  /** An element that never holds anything. */
  Markup empty(String element, String... attributes) {
    tag(element, attributes);
    out.append("/>");
    return this;
  }

  private void tag(String element, String... attributes) {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"").append(escaped(attributes[i + 1]));
      out.append('"');
    }
  }

  Markup text(String text) {
    out.append(escaped(text));
    return this;
  }

  /** An element that holds a text. */
  Markup element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close(element);
  }

  Markup line() {
    out.append('\n');
    return this;
  }

  /** Markup that is finished, or a style sheet. */
  Markup raw(String finished) {
    out.append(finished);
    return this;
  }

  /** What neither XML nor HTML has a place for becomes the replacement character. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\t', '\n' -> safe.append((char) c);
                default -> safe.appendCodePoint(printable(c) ? c : 0xFFFD);
              }
            });
    return safe.toString();
  }

  private static boolean printable(int c) {
    boolean noncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
    return c >= 0x20 && !(c >= 0x7F && c < 0xA0) && !surrogate && !noncharacter;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
