package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;

/** The ways in which a fixture's lines may end; fixtures are kept with line feeds. */
enum LineEnds {
  LF,
  CRLF,
  CR,
  MIXED,
  NO_LAST;

  byte[] apply(byte[] linefeeds) {
    String text = new String(linefeeds, StandardCharsets.ISO_8859_1);
    String out =
        switch (this) {
          case LF -> text;
          case CRLF -> text.replace("\n", "\r\n");
          case CR -> text.replace("\n", "\r");
          case MIXED -> mixed(text);
          case NO_LAST -> text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
        };
    return out.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String mixed(String text) {
    StringBuilder out = new StringBuilder();
    int line = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        out.append(line++ % 2 == 0 ? "\r\n" : "\n");
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }
}
