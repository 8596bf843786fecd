package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Findings as lines for people: grouped by family, the family with the worst finding first, columns
 * aligned.
 *
 * @param width columns of the terminal
 * @param colour whether escape sequences may be used
 */
public record FindingsText(int width, boolean colour) implements FindingsLayout {
  private static final int LEVEL = 9;
  private static final int ID = 9;
  private static final int INDENT = 4 + LEVEL + ID;
  private static final String MARGIN = " ".repeat(INDENT);
  private static final int LEAST_TEXT = 30;

  @Override
  public String head() {
    return "";
  }

  @Override
  public String part(ProfileFindings profile) {
    StringBuilder text = new StringBuilder(400 + 500 * profile.open().size());
    write(text, profile);
    return text.toString();
  }

  @Override
  public String between() {
    return "\n";
  }

  @Override
  public String tail(List<Unread> unread, boolean whole) {
    return "";
  }

  /** The lines for one profile, without line ends. */
  public List<String> lines(ProfileFindings profile) {
    return part(profile).lines().toList();
  }

  private void write(StringBuilder text, ProfileFindings profile) {
    bold(text, profile.printer());
    text.append(" (").append(profile.file()).append("): ").append(counts(profile)).append('\n');
    profile
        .problems()
        .forEach(problem -> text.append("  not read: ").append(problem).append('\n'));
    for (Map.Entry<Family, List<Finding>> group : groups(profile.open()).entrySet()) {
      text.append("\n  ");
      bold(text, group.getKey().title());
      text.append('\n');
      for (Finding finding : group.getValue()) {
        add(text, finding, profile);
      }
    }
    waived(text, profile);
  }

  /** The findings by family, in their order: worst first, so is the family with the worst. */
  private static Map<Family, List<Finding>> groups(List<Finding> findings) {
    Map<Family, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(finding.family(), key -> new ArrayList<>()).add(finding);
    }
    return groups;
  }

  private void add(StringBuilder text, Finding finding, ProfileFindings profile) {
    text.append("    ");
    level(text, finding.level());
    pad(text, finding.id(), ID);
    text.append(finding.path()).append('\n');
    wrap(text, finding.summary() + ": " + finding.evidence());
    if (profile.sorted().returned().contains(finding)) {
      wrap(text, "was waived on other facts");
    }
    for (Remedy remedy : finding.remedies()) {
      wrap(text, "remedy (" + remedy.safety().word() + "): " + remedy.title());
    }
    wrap(text, "source: " + finding.source());
  }

  private void waived(StringBuilder text, ProfileFindings profile) {
    if (!profile.sorted().waived().isEmpty()) {
      text.append("\n  ");
      bold(text, "Waived");
      text.append('\n');
    }
    for (Map.Entry<Finding, Waiver> entry : profile.sorted().waived().entrySet()) {
      Finding finding = entry.getKey();
      text.append("    ");
      pad(text, finding.level().word(), LEVEL);
      pad(text, finding.id(), ID);
      text.append(finding.path()).append('\n');
      wrap(text, "because: " + entry.getValue().reason());
    }
    for (String idle : profile.sorted().idle()) {
      text.append("    ");
      pad(text, "idle", LEVEL);
      text.append(idle).append(": nothing is found there any more\n");
    }
  }

  /** Breaks the words into lines that stand under the place. */
  private void wrap(StringBuilder text, String words) {
    int room = Math.max(LEAST_TEXT, width - INDENT);
    int from = 0;
    while (words.length() - from > room) {
      int space = words.lastIndexOf(' ', from + room);
      int cut = space <= from ? from + room : space;
      text.append(MARGIN).append(words, from, cut).append('\n');
      from = cut;
      while (from < words.length() && Character.isWhitespace(words.charAt(from))) {
        from++;
      }
    }
    text.append(MARGIN).append(words, from, words.length()).append('\n');
  }

  /** How many findings of each level, worst first. */
  public static String counts(ProfileFindings profile) {
    StringBuilder counts = new StringBuilder();
    for (Level level : Level.values()) {
      long count = profile.count(level);
      if (count > 0) {
        counts.append(counts.isEmpty() ? "" : ", ").append(plural(count, level.word()));
      }
    }
    if (counts.isEmpty()) {
      counts.append("nothing found");
    }
    int waived = profile.sorted().waived().size();
    return counts + (waived == 0 ? "" : ", " + waived + " waived");
  }

  private static String plural(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  private static void pad(StringBuilder text, String word, int columns) {
    text.append(word).append(" ".repeat(Math.max(1, columns - word.length())));
  }

  private void bold(StringBuilder text, String words) {
    text.append(colour ? "\u001b[1m" : "").append(words).append(colour ? "\u001b[0m" : "");
  }

  private void level(StringBuilder text, Level level) {
    if (colour) {
      text.append("\u001b[").append(code(level)).append('m');
    }
    pad(text, level.word(), LEVEL);
    if (colour) {
      text.append("\u001b[0m");
    }
  }

  private static String code(Level level) {
    return switch (level) {
      case ERROR -> "31";
      case WARNING -> "33";
      case NOTE -> "36";
    };
  }
}
