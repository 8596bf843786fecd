package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.RulePages;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * Findings as a SARIF log. Source: OASIS, Static Analysis Results Interchange Format 2.1.0.
 *
 * @param version of this program
 * @param rules the rule book's rules, in its order
 * @param lineOf line of a field in a profile's file, counted from 1; 0 where it is not known
 */
public record FindingsSarif(
    String version, List<Rule> rules, BiFunction<String, String, Integer> lineOf) {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  /** The whole log as a value that a JSON writer takes. */
  public Map<String, Object> log(List<ProfileFindings> profiles) {
    Map<String, Object> run = new LinkedHashMap<>();
    run.put("tool", Map.of("driver", driver()));
    run.put("columnKind", "utf16CodeUnits");
    run.put("results", profiles.stream().flatMap(profile -> results(profile).stream()).toList());
    Map<String, Object> log = new LinkedHashMap<>();
    log.put("$schema", SCHEMA);
    log.put("version", "2.1.0");
    log.put("runs", List.of(run));
    return log;
  }

  private Map<String, Object> driver() {
    Map<String, Object> driver = new LinkedHashMap<>();
    driver.put("name", "Gantrywright");
    driver.put("version", version);
    driver.put("rules", rules.stream().map(FindingsSarif::rule).toList());
    return driver;
  }

  private static Map<String, Object> rule(Rule rule) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", rule.id());
    json.put("name", name(rule.slug()));
    json.put("shortDescription", Map.of("text", rule.summary() + "."));
    RulePages.help(rule.family(), rule.slug()).ifPresent(help -> json.put("help", help(help)));
    json.put("defaultConfiguration", Map.of("level", rule.level().word()));
    Map<String, Object> more = new LinkedHashMap<>();
    more.put("family", rule.family().word());
    more.put("source", rule.source());
    json.put("properties", more);
    return json;
  }

  private static Map<String, Object> help(String page) {
    Map<String, Object> help = new LinkedHashMap<>();
    help.put("text", page.replace("**", "").replace("`", ""));
    help.put("markdown", page);
    return help;
  }

  private List<Map<String, Object>> results(ProfileFindings profile) {
    List<Map<String, Object>> results = new ArrayList<>();
    profile.open().forEach(finding -> results.add(result(profile, finding)));
    profile
        .sorted()
        .waived()
        .forEach(
            (finding, waiver) -> {
              Map<String, Object> result = result(profile, finding);
              result.put("suppressions", List.of(suppression(waiver)));
              results.add(result);
            });
    return results;
  }

  private Map<String, Object> result(ProfileFindings profile, Finding finding) {
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("ruleId", finding.id());
    int index = index(finding.id());
    if (index >= 0) {
      result.put("ruleIndex", index);
    }
    result.put("level", finding.level().word());
    result.put(
        "message",
        Map.of(
            "text", finding.where() + ": " + finding.summary() + "; " + finding.evidence() + "."));
    result.put("locations", List.of(location(profile, finding)));
    result.put("partialFingerprints", Map.of("place/v1", finding.key()));
    Map<String, Object> more = new LinkedHashMap<>();
    more.put("source", finding.source());
    more.put(
        "remedies",
        finding.remedies().stream()
            .map(remedy -> remedy.title() + " (" + remedy.safety().word() + ")")
            .toList());
    result.put("properties", more);
    return result;
  }

  private int index(String id) {
    for (int at = 0; at < rules.size(); at++) {
      if (rules.get(at).id().equals(id)) {
        return at;
      }
    }
    return -1;
  }

  private Map<String, Object> location(ProfileFindings profile, Finding finding) {
    Map<String, Object> physical = new LinkedHashMap<>();
    int colon = finding.path().lastIndexOf(':');
    String file = colon > 0 ? finding.path().substring(0, colon) : profile.file();
    int line =
        colon > 0
            ? Integer.parseInt(finding.path().substring(colon + 1))
            : lineOf.apply(profile.file(), finding.path());
    physical.put("artifactLocation", Map.of("uri", uri(file)));
    if (line > 0) {
      physical.put("region", Map.of("startLine", line));
    }
    Map<String, Object> logical = new LinkedHashMap<>();
    logical.put("fullyQualifiedName", finding.path());
    logical.put("kind", "member");
    Map<String, Object> location = new LinkedHashMap<>();
    location.put("physicalLocation", physical);
    location.put("logicalLocations", List.of(logical));
    return location;
  }

  private static Map<String, Object> suppression(Waiver waiver) {
    Map<String, Object> suppression = new LinkedHashMap<>();
    suppression.put("kind", "external");
    suppression.put("status", "accepted");
    suppression.put("justification", waiver.reason() == null ? "" : waiver.reason());
    return suppression;
  }

  /** A path as a relative or absolute URI reference. */
  static String uri(String path) {
    String slashes = path.replace('\\', '/');
    try {
      return slashes.matches("(?i)([a-z]:)?/.*")
          ? new URI("file", "", (slashes.startsWith("/") ? "" : "/") + slashes, null)
              .toASCIIString()
          : new URI(null, null, slashes.contains(":") ? "./" + slashes : slashes, null)
              .toASCIIString();
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(path, e);
    }
  }

  private static String name(String slug) {
    return java.util.Arrays.stream(slug.split("-"))
        .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
        .collect(Collectors.joining());
  }
}
