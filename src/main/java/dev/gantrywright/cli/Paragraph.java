package dev.gantrywright.cli;

import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;

/** Text that is broken at its spaces, as wide as the terminal and no wider than reads well. */
final class Paragraph {
  /** Lines longer than this are hard to read, however wide the terminal is. */
  static final int WIDEST = 100;

  private Paragraph() {}

  /** Columns of the terminal, as far as they can be told; a file gets the widest. */
  static int width(CommandSpec spec) {
    return Terminal.is(Terminal.OUT) ? Math.min(WIDEST, spec.usageMessage().width()) : WIDEST;
  }

  /** Whether colours may be used. */
  static boolean colour() {
    return Help.Ansi.AUTO.enabled();
  }

  /**
   * The text in lines of at most so many columns, each with its end.
   *
   * @param first what stands before the first line
   * @param margin what stands before the others
   */
  static String of(String first, String margin, String text, int width) {
    StringBuilder lines = new StringBuilder(first);
    int column = first.length();
    boolean fresh = true;
    for (String word : text.strip().split(" +", -1)) {
      if (!fresh && column + 1 + word.length() > width) {
        lines.append('\n').append(margin);
        column = margin.length();
        fresh = true;
      }
      lines.append(fresh ? "" : " ").append(word);
      column += (fresh ? 0 : 1) + word.length();
      fresh = false;
    }
    return lines.append('\n').toString();
  }
}
