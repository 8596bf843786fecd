package dev.gantrywright.link;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The only way to the wire. A reading command passes in its plain spelling: what is sent is the
 * table's text, never the caller's, so nothing can hide in comments, numbers or spacing. All else
 * waits until the user has armed this connection.
 */
public final class CommandGate {
  /** Longest command accepted, in characters; common receive buffers are shorter (memory). */
  public static final int LONGEST = 200;

  private static final Pattern NUMBERED = Pattern.compile("(?i)^N\\d+\\s+(.*)$");
  private static final Pattern CHECKED = Pattern.compile("^(.*?)\\s*\\*\\s*\\d{1,3}$");

  private final CommandTable table;
  private final Map<String, String> reading = new HashMap<>();

  /** Questions spelled exactly as they are sent: what a watch asks hundreds of times a second. */
  private final Map<String, Verdict.Pass> asItStands = new HashMap<>();

  private final String stop;
  private volatile boolean armed;

  /**
   * @throws IllegalArgumentException when the dialect calls a command a question that is known to
   *     move, heat or write
   */
  public CommandGate(CommandTable table, Dialect dialect) {
    this.table = table;
    table
        .words()
        .forEach(
            (word, kind) -> {
              if (kind == CommandKind.READING) {
                reading.put(word, word);
              }
            });
    admit("link.endstopQuery", dialect.endstopQuery());
    admit("link.identityQuery", dialect.identityQuery());
    admit("link.settingsQuery", dialect.settingsQuery());
    admit("link.temperatureQuery", dialect.temperatureQuery());
    this.stop = plain(dialect.stop());
    requireHarmless("link.stop", stop);
    reading
        .values()
        .forEach(
            text -> {
              if (judge(text) instanceof Verdict.Pass pass && pass.text().equals(text)) {
                asItStands.put(text, pass);
              }
            });
  }

  private void admit(String where, String query) {
    String text = plain(query);
    if (text.isEmpty()) {
      return;
    }
    requireHarmless(where, text);
    reading.put(key(text), text);
  }

  private void requireHarmless(String where, String text) {
    CommandKind worst = table.worstIn(text);
    boolean clean = text.chars().allMatch(c -> c >= ' ' && c < 0x7F) && text.length() <= LONGEST;
    if (!clean
        || worst == CommandKind.MOVING
        || worst == CommandKind.HEATING
        || worst == CommandKind.WRITING) {
      throw new IllegalArgumentException(
          where
              + " is '"
              + text
              + "', which "
              + (clean ? worst.phrase() : "holds control characters")
              + "; it must be a command that only asks");
    }
  }

  /** Lets moving, heating, writing and unknown commands through, until disarmed or reconnected. */
  public void arm() {
    armed = true;
  }

  public void disarm() {
    armed = false;
  }

  public boolean armed() {
    return armed;
  }

  /** The verdict on one command. */
  public sealed interface Verdict {
    /** It may go, spelled so. */
    record Pass(CommandKind kind, String text) implements Verdict {}

    /** It may not go. */
    record Refused(CommandKind kind, String reason) implements Verdict {}
  }

  /** What the command would do, armed or not. */
  public CommandKind kindOf(String command) {
    String text = plain(command);
    if (!printable(command)) {
      return CommandKind.UNKNOWN;
    }
    if (key(text).equals(key(stop))) {
      return CommandKind.STOP;
    }
    if (reading.containsKey(key(text))) {
      return CommandKind.READING;
    }
    CommandKind worst = table.worstIn(text);
    return worst.harmless() ? CommandKind.UNKNOWN : worst;
  }

  /** Judges one command as it stands. */
  public Verdict judge(String command) {
    Verdict.Pass plainQuestion = asItStands.get(command);
    if (plainQuestion != null) {
      return plainQuestion;
    }
    String text = plain(command);
    CommandKind kind = kindOf(command);
    if (!printable(command)) {
      return new Verdict.Refused(
          kind, "a command is one line of up to " + LONGEST + " printable ASCII characters");
    }
    if (text.isEmpty()) {
      return new Verdict.Refused(kind, "the command is empty");
    }
    return switch (kind) {
      case READING -> new Verdict.Pass(kind, reading.get(key(text)));
      case STOP -> new Verdict.Pass(kind, stop);
      default ->
          armed
              ? new Verdict.Pass(kind, text)
              : new Verdict.Refused(
                  kind, "'" + text + "' " + kind.phrase() + ": arm this connection first");
    };
  }

  /** A question as it is sent; empty where the text is none. */
  String question(String text) {
    return reading.getOrDefault(key(plain(text)), "");
  }

  private static boolean printable(String command) {
    return command.length() <= LONGEST
        && command.chars().allMatch(c -> (c >= ' ' && c < 0x7F) || c == '\t');
  }

  /** Without comments, line number, checksum and surplus space. */
  private static String plain(String command) {
    String text = command;
    int comment = text.indexOf(';');
    if (comment >= 0) {
      text = text.substring(0, comment);
    }
    text = text.replaceAll("\\([^()]*\\)", " ").strip();
    Matcher numbered = NUMBERED.matcher(text);
    if (numbered.matches()) {
      text = numbered.group(1);
    }
    Matcher checked = CHECKED.matcher(text);
    if (checked.matches()) {
      text = checked.group(1);
    }
    return text.strip();
  }

  private static String key(String text) {
    return text.strip().replaceAll("\\s+", " ").toUpperCase(Locale.ROOT);
  }
}
