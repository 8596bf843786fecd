package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** The stress corpus: headers of our own making, each full of one kind of nastiness. */
final class Corpus {
  private Corpus() {}

  /** The names in the corpus's own list, so that a fixture that is not listed is noticed. */
  static List<String> names() {
    return new String(Gnu.resource("corpus/list.txt"), StandardCharsets.US_ASCII)
        .lines()
        .filter(line -> !line.isBlank())
        .toList();
  }

  static byte[] bytes(String name) {
    return Gnu.resource("corpus/" + name);
  }
}
