package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.RulePages;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/** Findings as a SARIF log. Source: OASIS, Static Analysis Results Interchange Format 2.1.0. */
public final class FindingsSarif implements FindingsLayout {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final String version;
  private final List<Rule> rules;
  private final Map<String, Integer> index = new HashMap<>();
  private final Function<String, ToIntFunction<String>> linesOf;

  /**
   * @param version of this program
   * @param rules the rule book's rules, in its order
   * @param linesOf for a profile's file: the line of a field in it, counted from 1; 0 where it is
   *     not known; called on several threads
   */
  public FindingsSarif(
      String version, List<Rule> rules, Function<String, ToIntFunction<String>> linesOf) {
    this.version = version;
    this.rules = List.copyOf(rules);
    this.linesOf = linesOf;
    for (int at = 0; at < rules.size(); at++) {
      index.put(rules.get(at).id(), at);
    }
  }

  @Override
  public String head() {
    return frame(List.of(), true).head() + "\n        ";
  }

  @Override
  public String part(ProfileFindings profile) {
    return results(profile).stream()
        .map(result -> JsonText.of(result, 4))
        .collect(Collectors.joining(between()));
  }

  @Override
  public String between() {
    return ",\n        ";
  }

  @Override
  public String tail(List<Unread> unread, boolean whole) {
    return frame(unread, whole).tail() + "\n";
  }

  private JsonText.Frame frame(List<Unread> unread, boolean whole) {
    return JsonText.around(
        out -> {
          out.writeStartObject();
          out.writeStringProperty("$schema", SCHEMA);
          out.writeStringProperty("version", "2.1.0");
          out.writeName("runs").writeStartArray().writeStartObject();
          out.writePOJOProperty("tool", Map.of("driver", driver()));
          out.writeStringProperty("columnKind", "utf16CodeUnits");
          out.writeName("results").writeStartArray();
        },
        out -> {
          out.writeEndArray();
          out.writePOJOProperty("invocations", List.of(invocation(unread, whole)));
          out.writeEndObject().writeEndArray().writeEndObject();
        });
  }

  private static Map<String, Object> invocation(List<Unread> unread, boolean whole) {
    Map<String, Object> invocation = new LinkedHashMap<>();
    invocation.put("executionSuccessful", whole && unread.isEmpty());
    invocation.put(
        "toolExecutionNotifications", unread.stream().map(FindingsSarif::notification).toList());
    return invocation;
  }

  private static Map<String, Object> notification(Unread unread) {
    Map<String, Object> notification = new LinkedHashMap<>();
    notification.put("level", "error");
    notification.put("message", Map.of("text", unread.problem()));
    notification.put(
        "locations",
        List.of(
            Map.of(
                "physicalLocation",
                Map.of("artifactLocation", Map.of("uri", uri(unread.file()))))));
    return notification;
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
    if (profile.open().isEmpty() && profile.sorted().waived().isEmpty()) {
      return results;
    }
    ToIntFunction<String> lines = linesOf.apply(profile.file());
    profile.open().forEach(finding -> results.add(result(profile, finding, lines)));
    profile
        .sorted()
        .waived()
        .forEach(
            (finding, waiver) -> {
              Map<String, Object> result = result(profile, finding, lines);
              result.put("suppressions", List.of(suppression(waiver)));
              results.add(result);
            });
    return results;
  }

  private Map<String, Object> result(
      ProfileFindings profile, Finding finding, ToIntFunction<String> lines) {
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("ruleId", finding.id());
    if (index.containsKey(finding.id())) {
      result.put("ruleIndex", index.get(finding.id()));
    }
    result.put("level", finding.level().word());
    result.put(
        "message",
        Map.of(
            "text", finding.where() + ": " + finding.summary() + "; " + finding.evidence() + "."));
    result.put("locations", List.of(location(profile, finding, lines)));
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

  private static Map<String, Object> location(
      ProfileFindings profile, Finding finding, ToIntFunction<String> lines) {
    Map<String, Object> physical = new LinkedHashMap<>();
    int colon = finding.path().lastIndexOf(':');
    String file = colon > 0 ? finding.path().substring(0, colon) : profile.file();
    int line =
        colon > 0
            ? Integer.parseInt(finding.path().substring(colon + 1))
            : lines.applyAsInt(finding.path());
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
