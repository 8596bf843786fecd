package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Printable runs in an image, and names among them. */
final class EmbeddedText {
  private static final int SHORTEST = 4;
  private static final int LONGEST = 512;

  private EmbeddedText() {}

  /** Runs of at least four printable characters, in address order. */
  static List<String> strings(Contents contents) {
    List<String> out = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    for (Segment s : contents.segments()) {
      for (int i = 0; i < s.length(); i++) {
        int c = s.at(i);
        if (c >= ' ' && c < 127 && run.length() < LONGEST) {
          run.append((char) c);
        } else {
          flush(run, out);
        }
      }
      flush(run, out);
    }
    return out;
  }

  /** Whether a text holds a name as whole words; case and signs between words do not count. */
  static boolean names(String text, String name) {
    String wanted = words(name);
    if (wanted.isBlank()) {
      return false;
    }
    // Bytes of code before a string may happen to be printable and stick to its first word.
    for (int junk = 1; junk <= Math.min(3, text.length()); junk++) {
      if (words(text.substring(junk)).startsWith(wanted)) {
        return true;
      }
    }
    return words(text).contains(wanted);
  }

  private static String words(String text) {
    return " " + text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").trim() + " ";
  }

  private static void flush(StringBuilder run, List<String> out) {
    if (run.length() >= SHORTEST) {
      out.add(run.toString());
    }
    run.setLength(0);
  }
}
