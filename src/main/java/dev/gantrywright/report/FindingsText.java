package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
  private static final int LEAST_TEXT = 30;

  @Override
  public String head() {
    return "";
  }

  @Override
  public String part(ProfileFindings profile) {
    return String.join("\n", lines(profile)) + "\n";
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
    List<String> lines = new ArrayList<>();
    lines.add(bold(profile.printer()) + " (" + profile.file() + "): " + counts(profile));
    profile.problems().forEach(problem -> lines.add("  not read: " + problem));
    for (Map.Entry<Family, List<Finding>> group : groups(profile.open()).entrySet()) {
      lines.add("");
      lines.add("  " + bold(group.getKey().title()));
      group.getValue().forEach(finding -> add(lines, finding, profile));
    }
    waived(lines, profile);
    return lines;
  }

  private static Map<Family, List<Finding>> groups(List<Finding> findings) {
    Map<Family, List<Finding>> groups = new LinkedHashMap<>();
    findings.stream()
        .sorted(Finding.WORST_FIRST)
        .forEach(
            finding ->
                groups.computeIfAbsent(finding.family(), key -> new ArrayList<>()).add(finding));
    return groups;
  }

  private void add(List<String> lines, Finding finding, ProfileFindings profile) {
    int indent = 4 + LEVEL + ID;
    String head =
        "    "
            + colour(finding.level(), pad(finding.level().word(), LEVEL))
            + pad(finding.id(), ID)
            + finding.path();
    lines.add(head);
    wrap(lines, indent, finding.summary() + ": " + finding.evidence());
    if (profile.sorted().returned().contains(finding)) {
      wrap(lines, indent, "was waived on other facts");
    }
    for (Remedy remedy : finding.remedies()) {
      wrap(lines, indent, "remedy (" + remedy.safety().word() + "): " + remedy.title());
    }
    wrap(lines, indent, "source: " + finding.source());
  }

  private void waived(List<String> lines, ProfileFindings profile) {
    if (!profile.sorted().waived().isEmpty()) {
      lines.add("");
      lines.add("  " + bold("Waived"));
    }
    for (Map.Entry<Finding, Waiver> entry : profile.sorted().waived().entrySet()) {
      Finding finding = entry.getKey();
      lines.add(
          "    " + pad(finding.level().word(), LEVEL) + pad(finding.id(), ID) + finding.path());
      wrap(lines, 4 + LEVEL + ID, "because: " + entry.getValue().reason());
    }
    for (String idle : profile.sorted().idle()) {
      lines.add("    " + pad("idle", LEVEL) + idle + ": nothing is found there any more");
    }
  }

  private void wrap(List<String> lines, int indent, String text) {
    int room = Math.max(LEAST_TEXT, width - indent);
    String rest = text;
    while (rest.length() > room) {
      int cut = rest.lastIndexOf(' ', room);
      cut = cut <= 0 ? room : cut;
      lines.add(" ".repeat(indent) + rest.substring(0, cut));
      rest = rest.substring(cut).stripLeading();
    }
    lines.add(" ".repeat(indent) + rest);
  }

  /** How many findings of each level, worst first. */
  public static String counts(ProfileFindings profile) {
    String counts =
        java.util.Arrays.stream(Level.values())
            .sorted(Comparator.naturalOrder())
            .filter(level -> profile.count(level) > 0)
            .map(level -> plural(profile.count(level), level.word()))
            .collect(Collectors.joining(", "));
    String waived =
        profile.sorted().waived().isEmpty()
            ? ""
            : ", " + profile.sorted().waived().size() + " waived";
    return (counts.isEmpty() ? "nothing found" : counts) + waived;
  }

  private static String plural(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  private static String pad(String text, int columns) {
    return text + " ".repeat(Math.max(1, columns - text.length()));
  }

  private String bold(String text) {
    return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
  }

  private String colour(Level level, String text) {
    if (!colour) {
      return text;
    }
    String code =
        switch (level) {
          case ERROR -> "31";
          case WARNING -> "33";
          case NOTE -> "36";
        };
    return "\u001b[" + code + "m" + text + "\u001b[0m";
  }
}
