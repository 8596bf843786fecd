package dev.gantrywright.link;

import java.nio.charset.StandardCharsets;

/** Whether words stand in a line's bytes; letters A to Z in any case, others as they are. */
public final class LogSearch {
  private final byte[] words;

  public LogSearch(String words) {
    byte[] asked = words.getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < asked.length; i++) {
      asked[i] = folded(asked[i]);
    }
    this.words = asked;
  }

  /**
   * Looks through bytes from one place to before another.
   *
   * @return true when the words stand there; always when there are none
   */
  public boolean in(byte[] bytes, int from, int to) {
    for (int at = from; at <= to - words.length; at++) {
      int i = 0;
      while (i < words.length && folded(bytes[at + i]) == words[i]) {
        i++;
      }
      if (i == words.length) {
        return true;
      }
    }
    return false;
  }

  private static byte folded(byte b) {
    return b >= 'A' && b <= 'Z' ? (byte) (b + 'a' - 'A') : b;
  }
}
