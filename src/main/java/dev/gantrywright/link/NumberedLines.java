package dev.gantrywright.link;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Line numbers and checksums: off until the dialect or the machine asks for them. */
final class NumberedLines {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,9}");

  private final boolean fromTheStart;
  private boolean on;
  private boolean resetDue;
  private int next;

  NumberedLines(boolean fromTheStart) {
    this.fromTheStart = fromTheStart;
    restart();
  }

  /** The machine counts from the beginning again. */
  void restart() {
    on = fromTheStart;
    resetDue = on;
    next = 0;
  }

  /** True once, before the first numbered line. */
  boolean needsReset() {
    boolean due = resetDue;
    resetDue = false;
    return due;
  }

  byte[] frame(String text) {
    return on ? Framing.numbered(next++, text) : Framing.plain(text);
  }

  /** The machine asked for a line again, perhaps by number: from now on lines are numbered so. */
  void wanted(String asked) {
    Matcher m = NUMBER.matcher(asked);
    if (m.find()) {
      on = true;
      resetDue = false;
      next = Integer.parseInt(m.group());
    } else if (on) {
      next = Math.max(0, next - 1);
    }
  }

  byte[] frameAgain(String text) {
    return frame(text);
  }

  /** True when the line is what we sent, thrown back by the machine or the line. */
  boolean isEcho(String line, String sent) {
    if (line.equalsIgnoreCase(sent)) {
      return true;
    }
    return on
        && line.equals(
            new String(
                    Framing.numbered(Math.max(0, next - 1), sent),
                    java.nio.charset.StandardCharsets.US_ASCII)
                .strip());
  }
}
