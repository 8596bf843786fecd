package dev.gantrywright.link;

/**
 * One line from the machine.
 *
 * @param text without line end or surrounding space; bytes that are no UTF-8 read as U+FFFD
 * @param nanos when its end came, on the monotonic clock
 * @param dropped bytes left out because the line was too long
 */
public record ReceivedLine(String text, long nanos, long dropped) {
  /**
   * True when it is noise rather than text: a wrong baud rate, a bad cable. The limit, more than
   * one character in eight unprintable, is ours.
   */
  public boolean garbage() {
    int odd = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\uFFFD' || (c < ' ' && c != '\t') || (c >= 0x7F && c < 0xA0)) {
        odd++;
      }
    }
    return odd * 8 > text.length();
  }
}
