package dev.gantrywright.link.remote;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** The one-line texts with which serving programs refuse a client, as data instead of an error. */
final class ServerRefusal {
  /** ser2net 4.3 says the first two (measured); the practice server the last. */
  private static final List<String> TEXTS =
      List.of("device open failure", "port already in use", "line busy");

  private ServerRefusal() {}

  /** The refusal that the first bytes of a connection hold, or an empty text. */
  static String in(byte[] bytes, int count) {
    String text = new String(bytes, 0, Math.min(count, 200), StandardCharsets.ISO_8859_1).strip();
    String lower = text.toLowerCase(Locale.ROOT);
    for (String refusal : TEXTS) {
      if (lower.startsWith(refusal)) {
        return text.lines().findFirst().orElse(text);
      }
    }
    return "";
  }
}
