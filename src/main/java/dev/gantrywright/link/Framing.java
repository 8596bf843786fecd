package dev.gantrywright.link;

import java.nio.charset.StandardCharsets;

/** Turns a command into the bytes of a line, numbered and checked where the machine wants that. */
final class Framing {
  private Framing() {}

  static byte[] plain(String text) {
    return (text + "\n").getBytes(StandardCharsets.US_ASCII);
  }

  /** Line number, text and the XOR of all bytes before the asterisk (common practice). */
  static byte[] numbered(int number, String text) {
    String body = "N" + number + " " + text;
    int sum = 0;
    for (byte b : body.getBytes(StandardCharsets.US_ASCII)) {
      sum ^= b & 0xFF;
    }
    return plain(body + "*" + sum);
  }

  /** Ends any line that was half sent, then the command. */
  static byte[] afterBreak(String text) {
    return ("\n" + text + "\n").getBytes(StandardCharsets.US_ASCII);
  }
}
