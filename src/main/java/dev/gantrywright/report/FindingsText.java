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
    Utf8Text text = new Utf8Text();
    write(profile, text);
    return text.toString();
  }

  @Override
  public void write(ProfileFindings profile, Utf8Text text) {
    head(text, profile);
    for (Map.Entry<Family, List<Finding>> group : groups(profile.open()).entrySet()) {
      text.add("\n  ");
      bold(text, group.getKey().title());
      text.add("\n");
      for (Finding finding : group.getValue()) {
        add(text, finding, profile);
      }
    }
    waived(text, profile);
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

  private void head(Utf8Text text, ProfileFindings profile) {
    bold(text, profile.printer());
    text.add(" (").add(profile.file()).add("): ").add(counts(profile)).add("\n");
    profile.problems().forEach(problem -> text.add("  not read: ").add(problem).add("\n"));
  }

  /** The findings by family, in their order: worst first, so is the family with the worst. */
  private static Map<Family, List<Finding>> groups(List<Finding> findings) {
    Map<Family, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(finding.family(), key -> new ArrayList<>()).add(finding);
    }
    return groups;
  }

  private void add(Utf8Text text, Finding finding, ProfileFindings profile) {
    text.add("    ");
    level(text, finding.level());
    pad(text, finding.id(), ID);
    text.add(finding.path()).add("\n");
    wrap(text, finding.summary() + ": ", finding.evidence());
    if (profile.sorted().returned().contains(finding)) {
      wrap(text, "was waived on other facts", "");
    }
    for (Remedy remedy : finding.remedies()) {
      wrap(text, "remedy (" + remedy.safety().word() + "): ", remedy.title());
    }
    wrap(text, "source: ", finding.source());
  }

  private void waived(Utf8Text text, ProfileFindings profile) {
    if (!profile.sorted().waived().isEmpty()) {
      text.add("\n  ");
      bold(text, "Waived");
      text.add("\n");
    }
    for (Map.Entry<Finding, Waiver> entry : profile.sorted().waived().entrySet()) {
      Finding finding = entry.getKey();
      text.add("    ");
      pad(text, finding.level().word(), LEVEL);
      pad(text, finding.id(), ID);
      text.add(finding.path()).add("\n");
      wrap(text, "because: ", entry.getValue().reason());
    }
    for (String idle : profile.sorted().idle()) {
      text.add("    ");
      pad(text, "idle", LEVEL);
      text.add(idle).add(": nothing is found there any more\n");
    }
  }

  /** Breaks the words into lines that stand under the place. */
  private void wrap(Utf8Text text, String lead, String words) {
    text.wrapped(MARGIN, Math.max(LEAST_TEXT, width - INDENT), lead, words);
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

  private static void pad(Utf8Text text, String word, int columns) {
    text.add(word).add(MARGIN, 0, Math.max(1, columns - word.length()));
  }

  private void bold(Utf8Text text, String words) {
    text.add(colour ? "\u001b[1m" : "").add(words).add(colour ? "\u001b[0m" : "");
  }

  private void level(Utf8Text text, Level level) {
    if (colour) {
      text.add("\u001b[").add(code(level)).add("m");
    }
    pad(text, level.word(), LEVEL);
    if (colour) {
      text.add("\u001b[0m");
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
