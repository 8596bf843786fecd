package dev.gantrywright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.gantrywright.app.Checking;
import dev.gantrywright.app.Opening;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FindingsReportsTest {
  private static final Checking CHECKING = Checking.shipped();
  private static ProfileFindings heron;
  private static ProfileFindings waived;

  @BeforeAll
  static void check() throws Exception {
    Path file = Path.of("demo-profiles", "heron.printer.json");
    heron = CHECKING.check(new Opening().open(file));
    Finding finding =
        heron.open().stream().filter(f -> f.level() == Level.ERROR).findFirst().orElseThrow();
    String json = Files.readString(file).strip();
    String waiver =
        JsonMapper.shared()
            .writeValueAsString(
                java.util.Map.of(
                    finding.key(),
                    java.util.Map.of(
                        "reason",
                        "parts <are> on order",
                        "evidence",
                        finding.evidence(),
                        "date",
                        "2026-03-01"),
                    "GW-E999@nowhere",
                    java.util.Map.of("reason", "gone", "evidence", "", "date", "2026-03-01")));
    String patched = json.substring(0, json.lastIndexOf('}')) + ", \"waivers\": " + waiver + "}";
    waived =
        CHECKING.check(
            new Opening()
                .open(
                    file,
                    ProfileStore.parse("heron", patched.getBytes(StandardCharsets.UTF_8)),
                    null));
  }

  private static JsonNode sarif(List<ProfileFindings> profiles) {
    return JsonMapper.shared()
        .readTree(
            new FindingsSarif("0.1.0", CHECKING.book().rules(), file -> path -> 7)
                .document(profiles));
  }

  private static Schema sarifSchema() throws Exception {
    // sarif-schema-2.1.0.json: OASIS, SARIF 2.1.0 errata 01 (os), id in the file; JSON Schema draft
    // 4.
    String text;
    try (var in = FindingsReportsTest.class.getResourceAsStream("sarif-schema-2.1.0.json")) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4).getSchema(text);
  }

  @Test
  void theSarifLogIsValidAgainstThePublishedSchema() throws Exception {
    Schema schema = sarifSchema();
    assertThat(schema.validate(sarif(List.of(heron, waived)))).isEmpty();
    assertThat(schema.validate(JsonMapper.shared().readTree("{\"version\":\"2.1.0\"}")))
        .as("the schema refuses a log without runs")
        .isNotEmpty();
  }

  @Test
  void aSarifResultPointsAtRuleFieldAndLine() {
    JsonNode run = sarif(List.of(heron)).get("runs").get(0);
    JsonNode result = run.get("results").get(0);
    JsonNode rule = run.get("tool").get("driver").get("rules").get(result.get("ruleIndex").asInt());
    assertThat(rule.get("id")).isEqualTo(result.get("ruleId"));
    JsonNode place = result.get("locations").get(0);
    assertThat(place.get("physicalLocation").get("region").get("startLine").asInt()).isEqualTo(7);
    assertThat(place.get("physicalLocation").get("artifactLocation").get("uri").asString())
        .isEqualTo("demo-profiles/heron.printer.json");
    assertThat(place.get("logicalLocations").get(0).get("fullyQualifiedName").asString())
        .isEqualTo(heron.open().get(0).path());
  }

  @Test
  void aWaivedFindingIsSuppressedInSarifAndSkippedInJunit() throws Exception {
    JsonNode results = sarif(List.of(waived)).get("runs").get(0).get("results");
    assertThat(results.valueStream().filter(r -> r.has("suppressions")))
        .singleElement()
        .satisfies(
            r ->
                assertThat(r.get("suppressions").get(0).get("justification").asString())
                    .isEqualTo("parts <are> on order"));
    Element suite = (Element) junit(List.of(waived)).getElementsByTagName("testsuite").item(0);
    assertThat(suite.getAttribute("skipped")).isEqualTo("1");
  }

  private static Document junit(List<ProfileFindings> profiles) throws Exception {
    String text = new FindingsJunit(CHECKING.book().rules()).document(profiles);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text)));
  }

  @Test
  void junitHasACaseForEachRuleAndAFailureForEachErrorRule() throws Exception {
    Document document = junit(List.of(heron));
    Element suite = (Element) document.getElementsByTagName("testsuite").item(0);
    int rules = CHECKING.book().rules().size();
    long failing =
        heron.open().stream()
            .filter(f -> f.level() == Level.ERROR)
            .map(Finding::id)
            .distinct()
            .count();
    assertThat(suite.getAttribute("tests")).isEqualTo(String.valueOf(rules));
    assertThat(suite.getAttribute("failures")).isEqualTo(String.valueOf(failing));
    assertThat(document.getElementsByTagName("testcase").getLength()).isEqualTo(rules);
    assertThat(document.getElementsByTagName("failure").getLength()).isEqualTo((int) failing);
  }

  @Test
  void textIsGroupedWorstFirstAndAligned() {
    List<String> lines = new FindingsText(100, false).lines(heron);
    assertThat(lines.get(0)).startsWith("Heron (demo-profiles").contains("errors");
    assertThat(lines).noneMatch(line -> line.contains("\u001b"));
    assertThat(lines).allMatch(line -> line.length() <= 100 || !line.strip().contains(" "));
    List<String> heads = lines.stream().filter(line -> line.matches(" {4}\\S.*GW-.*")).toList();
    assertThat(heads).hasSize(heron.open().size());
    assertThat(heads).allMatch(line -> line.indexOf("GW-") == 13);
    assertThat(heads.get(0)).startsWith("    error ");
    assertThat(lines).anyMatch(line -> line.contains("remedy (safe): Build fulmar_m4"));
    assertThat(new FindingsText(100, true).lines(heron)).anyMatch(l -> l.contains("\u001b[31m"));
  }

  @Test
  void textListsWhatIsWaivedAndWhatIsIdle() {
    assertThat(new FindingsText(100, false).lines(waived))
        .anyMatch(line -> line.contains("because: parts <are> on order"))
        .anyMatch(line -> line.contains("GW-E999@nowhere"));
    assertThat(FindingsText.counts(waived)).endsWith("1 waived");
  }

  @Test
  void jsonCarriesEveryPartOfAFinding() {
    JsonNode json =
        JsonMapper.shared()
            .readTree(new FindingsJson().document(List.of(heron)))
            .get("profiles")
            .get(0);
    assertThat(json.get("counts").get("error").asLong()).isEqualTo(heron.count(Level.ERROR));
    JsonNode finding = json.get("findings").get(0);
    for (String key :
        List.of(
            "id",
            "slug",
            "level",
            "family",
            "path",
            "where",
            "summary",
            "evidence",
            "source",
            "remedies",
            "link")) {
      assertThat(finding.has(key)).as(key).isTrue();
    }
    assertThat(json.get("findings").valueStream().flatMap(f -> f.get("remedies").valueStream()))
        .anyMatch(
            remedy ->
                remedy.get("safety").asString().equals("safe")
                    && remedy.get("edits").get(0).get("path").asString().equals("board.target"));
  }

  @Test
  void pathsBecomeUriReferences() {
    assertThat(FindingsSarif.uri("my printers/heron.printer.json"))
        .isEqualTo("my%20printers/heron.printer.json");
    assertThat(FindingsSarif.uri("/srv/heron.printer.json"))
        .isEqualTo("file:///srv/heron.printer.json");
    assertThat(FindingsSarif.uri("C:\\printers\\heron.printer.json"))
        .isEqualTo("file:///C:/printers/heron.printer.json");
  }

  @Test
  void everyFormatNamesWhatCouldNotBeReadAndThatTheRunWasStopped() throws Exception {
    List<FindingsLayout.Unread> unread =
        List.of(new FindingsLayout.Unread("lost & found.printer.json", "no such <file>"));
    FindingsLayout sarif = new FindingsSarif("0.1.0", CHECKING.book().rules(), file -> path -> 7);
    JsonNode log = JsonMapper.shared().readTree(sarif.head() + sarif.tail(unread, false));
    assertThat(sarifSchema().validate(log)).isEmpty();
    JsonNode invocation = log.get("runs").get(0).get("invocations").get(0);
    assertThat(invocation.get("executionSuccessful").asBoolean()).isFalse();
    assertThat(invocation.toString()).contains("no such <file>", "lost%20&%20found.printer.json");

    FindingsLayout json = new FindingsJson();
    JsonNode document = JsonMapper.shared().readTree(json.head() + json.tail(unread, false));
    assertThat(document.get("profiles").size()).isZero();
    assertThat(document.get("stopped").asBoolean()).isTrue();
    assertThat(document.get("unread").get(0).get("problem").asString()).isEqualTo("no such <file>");

    FindingsLayout junit = new FindingsJunit(CHECKING.book().rules());
    Document suites =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(junit.head() + junit.tail(unread, false))));
    Element error = (Element) suites.getElementsByTagName("error").item(0);
    assertThat(error.getAttribute("message")).isEqualTo("no such <file>");
  }

  @Test
  void aDocumentOfSeveralPrintersIsOneDocument() throws Exception {
    List<ProfileFindings> three = List.of(heron, waived, heron);
    assertThat(sarif(three).get("runs").get(0).get("results").size())
        .isEqualTo(3 * heron.open().size());
    assertThat(
            JsonMapper.shared().readTree(new FindingsJson().document(three)).get("profiles").size())
        .isEqualTo(3);
    assertThat(junit(three).getElementsByTagName("testsuite").getLength()).isEqualTo(3);
    assertThat(junit(List.of()).getElementsByTagName("testsuite").getLength()).isZero();
    assertThat(sarif(List.of()).get("runs").get(0).get("results").size()).isZero();
  }
}
