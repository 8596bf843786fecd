package dev.gantrywright.ui.state;

/**
 * One row of what would be written.
 *
 * @param kind heading of a file, unchanged line, changed line, a fold of unchanged lines, or the
 *     reason for the line above or the lines below it, where the view has no margin for it
 * @param file relative to the folder
 * @param line from 1 in the file before the change; 0 where it has none
 * @param before the line as it stands
 * @param after the line as it will stand
 * @param path the profile field that causes the change; empty where none does
 * @param cause why the line changes, in words
 * @param faded the reason why the compiler does not see the line; empty where it does
 */
public record DiffRow(
    Kind kind,
    String file,
    int line,
    String before,
    String after,
    String path,
    String cause,
    String faded) {
  /** What a row is. */
  public enum Kind {
    FILE,
    SAME,
    CHANGED,
    FOLD,
    REASON
  }

  /** First character that differs, counted from 0. */
  public int markStart() {
    int most = Math.min(before.length(), after.length());
    int at = 0;
    while (at < most && before.charAt(at) == after.charAt(at)) {
      at++;
    }
    return at;
  }

  /** How many characters at the end are the same. */
  public int sameTail() {
    int start = markStart();
    int most = Math.min(before.length(), after.length()) - start;
    int tail = 0;
    while (tail < most
        && before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
      tail++;
    }
    return tail;
  }
}
