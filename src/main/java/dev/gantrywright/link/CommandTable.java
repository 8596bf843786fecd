package dev.gantrywright.link;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Which command word does what, from {@code commands.json}. */
public final class CommandTable {
  private static final Pattern WORD = Pattern.compile("([GMT])\\s*0*(\\d+)");
  private static final List<CommandKind> WORST_FIRST =
      List.of(
          CommandKind.MOVING,
          CommandKind.HEATING,
          CommandKind.WRITING,
          CommandKind.UNKNOWN,
          CommandKind.STOP,
          CommandKind.READING);

  private final Map<String, CommandKind> kinds;

  private CommandTable(Map<String, CommandKind> kinds) {
    this.kinds = kinds;
  }

  /** The table that ships with the program. */
  public static CommandTable standard() {
    try (InputStream in = CommandTable.class.getResourceAsStream("commands.json")) {
      JsonNode tree = JsonMapper.builder().build().readTree(in);
      Map<String, CommandKind> kinds = new TreeMap<>();
      for (CommandKind kind : CommandKind.values()) {
        for (JsonNode word : tree.path(kind.name().toLowerCase(Locale.ROOT))) {
          kinds.put(word.asString(), kind);
        }
      }
      return new CommandTable(kinds);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Kind of one command word such as {@code G28}; UNKNOWN when the table lacks it. */
  public CommandKind kindOf(String word) {
    return kinds.getOrDefault(word.toUpperCase(Locale.ROOT), CommandKind.UNKNOWN);
  }

  /** The worst that any command word inside the text would do; UNKNOWN when it holds none. */
  public CommandKind worstIn(String text) {
    CommandKind worst = null;
    Matcher m = WORD.matcher(text.toUpperCase(Locale.ROOT));
    while (m.find()) {
      CommandKind kind = kindOf(m.group(1) + m.group(2));
      if (worst == null || WORST_FIRST.indexOf(kind) < WORST_FIRST.indexOf(worst)) {
        worst = kind;
      }
    }
    return worst == null ? CommandKind.UNKNOWN : worst;
  }

  Map<String, CommandKind> words() {
    return kinds;
  }
}
