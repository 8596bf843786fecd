package dev.gantrywright.ui.shell;

/**
 * One thing that the palette finds.
 *
 * @param words what it does or where it leads
 * @param about where it belongs, or its key
 * @param act does it
 */
public record Command(String words, String about, Runnable act) {
  /** How well it answers what is typed: 0 not at all; more is better. */
  public int answers(String typed) {
    String all = (words + " " + about).toLowerCase(java.util.Locale.ROOT);
    String asked = typed.toLowerCase(java.util.Locale.ROOT).strip();
    int score = 1;
    for (String word : asked.split("\\s+")) {
      int at = all.indexOf(word);
      if (at < 0) {
        return 0;
      }
      boolean start = at == 0 || !Character.isLetterOrDigit(all.charAt(at - 1));
      score += (start ? 4 : 1) + (at == 0 ? 2 : 0);
    }
    return score;
  }
}
