package dev.gantrywright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * One fenced example of a rule's page.
 *
 * @param kind {@code bad} or {@code good}
 * @param printer the clean demo printer that it starts from
 * @param path where a bad one is found; null for a good one
 * @param fixed what the remedies leave, as patches on the clean printer, in their order
 * @param says what the page shows of the finding; empty where it shows nothing
 * @param line where it stands in the page
 */
record Example(
    String kind,
    String printer,
    String path,
    ObjectNode patch,
    List<ObjectNode> fixed,
    String says,
    int line) {
  private static final Pattern FENCE =
      Pattern.compile(
          "(?ms)^```json (bad|good|fixed)(?: (\\S+))?(?: ([^\n]+))?\n(.*?)^```$"
              + "(?:\n\n```text says\n(.*?)^```$)?");

  private static final Map<String, List<Example>> READ = new ConcurrentHashMap<>();

  /** Every example of a page, each {@code fixed} joined to the {@code bad} before it. */
  static List<Example> of(String page) {
    return READ.computeIfAbsent(page, Example::read);
  }

  private static List<Example> read(String page) {
    List<Example> examples = new ArrayList<>();
    Matcher fence = FENCE.matcher(page);
    while (fence.find()) {
      ObjectNode patch = (ObjectNode) JsonMapper.shared().readTree(fence.group(4));
      if (fence.group(1).equals("fixed")) {
        examples.get(examples.size() - 1).fixed().add(patch);
      } else {
        int line = (int) page.substring(0, fence.start()).lines().count() + 1;
        examples.add(
            new Example(
                fence.group(1),
                fence.group(2),
                fence.group(3),
                patch,
                new ArrayList<>(),
                fence.group(5) == null ? "" : fence.group(5),
                line));
      }
    }
    return examples;
  }

  boolean bad() {
    return kind.equals("bad");
  }

  /** The page with what its rule says now shown below each bad example. */
  static String withFindings(String page, Rule rule, RuleBook only) {
    return FENCE
        .matcher(page)
        .replaceAll(
            fence -> {
              String json = fence.group().replaceAll("(?s)\n\n```text says\n.*", "");
              if (!fence.group(1).equals("bad")) {
                return Matcher.quoteReplacement(json);
              }
              ObjectNode patch = (ObjectNode) JsonMapper.shared().readTree(fence.group(4));
              Finding finding =
                  only.check(Workshop.printer(fence.group(2), patch)).stream()
                      .filter(found -> found.path().equals(fence.group(3)))
                      .findFirst()
                      .orElseThrow();
              return Matcher.quoteReplacement(
                  json + "\n\n```text says\n" + said(rule, finding) + "```");
            });
  }

  /** A finding as pages show it: evidence, remedies, and its source where that is its own. */
  static String said(Rule rule, Finding finding) {
    StringBuilder text = new StringBuilder(finding.evidence()).append('\n');
    for (Remedy remedy : finding.remedies()) {
      text.append(remedy.safety().word()).append(": ").append(remedy.title()).append('\n');
    }
    if (!finding.source().equals(rule.source())) {
      text.append("source: ").append(finding.source()).append('\n');
    }
    return text.toString();
  }
}
