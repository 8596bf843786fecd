package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Findings as JUnit XML: a suite for each profile, a case for each rule. An error fails its case, a
 * waived finding skips it, warnings and notes are its output; a rule that could not finish is in
 * error. A profile that could not be read is a suite with one case in error.
 */
public final class FindingsJunit implements FindingsLayout {
  private final List<Rule> rules;
  private final List<String> ids;
  private final List<String> starts;

  /**
   * @param rules the rule book's rules, in its order
   */
  public FindingsJunit(List<Rule> rules) {
    this.rules = List.copyOf(rules);
    this.ids = rules.stream().map(Rule::id).toList();
    this.starts =
        rules.stream()
            .map(
                rule ->
                    "    <testcase classname=\"gantrywright."
                        + rule.family().word()
                        + "\" name=\""
                        + XmlText.of(rule.id() + " " + rule.slug())
                        + "\"")
            .toList();
  }

  @Override
  public String head() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"Gantrywright\">\n";
  }

  @Override
  public String between() {
    return "";
  }

  @Override
  public String tail(List<Unread> unread, boolean whole) {
    String suites = unread.stream().map(FindingsJunit::unread).collect(Collectors.joining());
    return suites + (whole ? "" : "<!-- stopped before the end -->\n") + "</testsuites>\n";
  }

  private static String unread(Unread unread) {
    return suite(unread.file(), 1, 0, 1, 0)
        + "    <testcase classname=\"gantrywright\" name=\"profile\">\n      <error message=\""
        + XmlText.of(unread.problem())
        + "\"/>\n    </testcase>\n  </testsuite>\n";
  }

  private static String suite(String name, int tests, int failures, int errors, int skipped) {
    return "  <testsuite name=\""
        + XmlText.of(name)
        + "\" tests=\""
        + tests
        + "\" failures=\""
        + failures
        + "\" errors=\""
        + errors
        + "\" skipped=\""
        + skipped
        + "\">\n";
  }

  @Override
  public String part(ProfileFindings profile) {
    Map<String, List<Finding>> open = byRule(profile.open());
    Map<String, List<Finding>> waived = byRule(List.copyOf(profile.sorted().waived().keySet()));
    Map<String, String> stopped =
        profile.open().stream()
            .filter(finding -> finding.family() == Family.INTERNAL)
            .collect(Collectors.toMap(Finding::path, Finding::evidence, (a, b) -> a));
    StringBuilder cases = new StringBuilder(24_000);
    int failures = 0;
    int skipped = 0;
    int errors = 0;
    for (int at = 0; at < rules.size(); at++) {
      String id = ids.get(at);
      List<Finding> found = open.getOrDefault(id, List.of());
      List<Finding> aside = waived.getOrDefault(id, List.of());
      cases.append(starts.get(at));
      if (stopped.containsKey(id)) {
        errors++;
        cases
            .append(">\n      <error message=\"")
            .append(XmlText.of(stopped.get(id)))
            .append("\"/>\n    </testcase>\n");
      } else if (found.stream().anyMatch(finding -> finding.level() == Level.ERROR)) {
        failures++;
        cases
            .append(">\n      <failure message=\"")
            .append(XmlText.of(rules.get(at).summary()))
            .append("\" type=\"error\">")
            .append(lines(found))
            .append("</failure>\n    </testcase>\n");
      } else if (!aside.isEmpty()) {
        skipped++;
        cases
            .append(">\n      <skipped message=\"")
            .append(XmlText.of(reasons(aside, profile)))
            .append("\"/>\n    </testcase>\n");
      } else if (!found.isEmpty()) {
        cases
            .append(">\n      <system-out>")
            .append(lines(found))
            .append("</system-out>\n    </testcase>\n");
      } else {
        cases.append("/>\n");
      }
    }
    return suite(profile.file(), rules.size(), failures, errors, skipped)
        + cases
        + "  </testsuite>\n";
  }

  private static Map<String, List<Finding>> byRule(List<Finding> findings) {
    Map<String, List<Finding>> byRule = new HashMap<>();
    findings.forEach(
        finding -> byRule.computeIfAbsent(finding.id(), key -> new ArrayList<>()).add(finding));
    return byRule;
  }

  private static String lines(List<Finding> found) {
    return XmlText.of(
        found.stream()
            .map(f -> f.level().word() + " " + f.path() + ": " + f.evidence())
            .collect(Collectors.joining("\n")));
  }

  private static String reasons(List<Finding> aside, ProfileFindings profile) {
    return aside.stream()
        .map(profile.sorted().waived()::get)
        .map(Waiver::reason)
        .collect(Collectors.joining("; ", "waived: ", ""));
  }
}
