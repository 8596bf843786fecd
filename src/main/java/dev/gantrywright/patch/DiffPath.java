package dev.gantrywright.patch;

import java.nio.charset.StandardCharsets;

/** How a path stands in a diff's file lines, so that both readers find the file again. */
final class DiffPath {
  private DiffPath() {}

  /**
   * The path as the diff carries it: quoted in C style where it holds a quote, a backslash, a
   * control character or a byte outside ASCII; followed by a tab where it holds a space.
   */
  static String of(String path) {
    byte[] bytes = path.getBytes(StandardCharsets.UTF_8);
    boolean quote = false;
    StringBuilder quoted = new StringBuilder("\"");
    for (byte b : bytes) {
      int c = b & 0xff;
      if (c == '"' || c == '\\') {
        quote = true;
        quoted.append('\\').append((char) c);
      } else if (c < 0x20 || c >= 0x7f) {
        quote = true;
        quoted.append(String.format("\\%03o", c));
      } else {
        quoted.append((char) c);
      }
    }
    if (quote) {
      return quoted.append('"').toString();
    }
    return path.indexOf(' ') >= 0 ? path + "\t" : path;
  }
}
