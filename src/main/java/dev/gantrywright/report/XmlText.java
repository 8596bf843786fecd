package dev.gantrywright.report;

import java.util.regex.Pattern;

/** Text as it stands in XML, between tags or in an attribute. */
final class XmlText {
  /** XML 1.0 has no place for most control characters, not even escaped: section 2.2, Char. */
  private static final Pattern NO_CHAR =
      Pattern.compile(
          "[^\\u0009\\u000A\\u000D\\u0020-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

  private XmlText() {}

  static String of(String text) {
    return NO_CHAR
        .matcher(text)
        .replaceAll("\uFFFD")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
