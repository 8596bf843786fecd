package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckVerbTest {
  @Test
  void findingsOfLevelErrorGiveStatusOne() {
    CommandRun run = CommandRun.of("check", "demo-profiles/heron.printer.json");
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("GW-M001", "axes.x.stepsPerMm", "32 microsteps for 16");
  }

  @Test
  void cleanPrintersGiveStatusZero() {
    CommandRun run =
        CommandRun.of(
            "check",
            "--format",
            "json",
            "demo-profiles/sandpiper.printer.json",
            "demo-profiles/guillemot.printer.json");
    assertThat(run.status()).isEqualTo(ExitStatus.FINE);
    assertThat(run.json().get("profiles").size()).isEqualTo(2);
    assertThat(run.json().get("profiles").valueStream())
        .allMatch(
            p ->
                p.get("counts").get("error").asInt() + p.get("counts").get("warning").asInt() == 0);
  }

  @Test
  void aDirectoryStandsForItsProfiles() {
    CommandRun run = CommandRun.of("check", "demo-profiles", "--format", "sarif");
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(run.json().get("version").asString()).isEqualTo("2.1.0");
    assertThat(
            run.json()
                .get("runs")
                .get(0)
                .get("results")
                .valueStream()
                .map(r -> r.get("locations").get(0).get("physicalLocation").get("region"))
                .filter(region -> region != null)
                .map(region -> region.get("startLine").asInt()))
        .anyMatch(line -> line > 10);
  }

  @Test
  void junitIsOneXmlDocument() {
    CommandRun run =
        CommandRun.of("check", "--format", "junit", "demo-profiles/heron.printer.json");
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(run.out()).startsWith("<?xml").contains("<testsuite ", "</testsuites>");
  }

  @Test
  void aMissingProfileIsOneLineAndTheOthersAreChecked() {
    CommandRun run =
        CommandRun.of("check", "nowhere.printer.json", "demo-profiles/sandpiper.printer.json");
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("nowhere.printer.json");
    assertThat(run.out()).contains("Sandpiper");
  }

  @Test
  void aBrokenProfileSaysWhere(@TempDir Path dir) throws Exception {
    Path file = dir.resolve("broken.printer.json");
    Files.writeString(file, "{\"format\": 1, \"serial\": {\"baud\": \"fast\"}}");
    CommandRun run = CommandRun.of("check", file.toString());
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("serial.baud", "line 1");
    assertThat(run.out()).isEmpty();
    CommandRun json = CommandRun.of("check", file.toString(), "--format", "json");
    assertThat(json.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(json.json().get("unread").get(0).get("problem").asString()).contains("serial.baud");
  }

  @Test
  void anEmptyDirectoryAndAMissingFolderAreTold(@TempDir Path dir) {
    assertThat(CommandRun.of("check", dir.toString()).status()).isEqualTo(ExitStatus.USAGE);
    CommandRun run =
        CommandRun.of("check", "demo-profiles/heron.printer.json", "--folder", dir + "/none");
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err()).contains("none");
  }

  @Test
  void theFolderOptionTakesThePlaceOfTheNamedOne(@TempDir Path dir) throws Exception {
    Files.writeString(dir.resolve("other.h"), "#define OTHER 1\n");
    CommandRun run =
        CommandRun.of(
            "check",
            "demo-profiles/sandpiper.printer.json",
            "--folder",
            dir.toString(),
            "--format",
            "json");
    assertThat(run.json().get("profiles").get(0).get("findings").valueStream())
        .anyMatch(f -> f.get("slug").asString().equals("mapped-macro-missing"));
  }

  @Test
  void aRulesPageIsPrintedByIdAndBySlug() {
    CommandRun byId = CommandRun.of("check", "--page", "gw-m001");
    assertThat(byId.status()).isZero();
    assertThat(byId.out())
        .startsWith("GW-M001 steps-disagree-with-drive\n")
        .contains("level:  error", "family: Motion", "\nRemedy\n")
        .doesNotContain("Examples", "#");
    assertThat(byId.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
    assertThat(byId.out()).contains("(common\n        practice, no published source)");
    assertThat(CommandRun.of("check", "--page", "steps-disagree-with-drive").out())
        .isEqualTo(byId.out());
  }

  @Test
  void aFolderThatIsGoneIsAWarningWithAndWithoutTheOption(@TempDir Path away) throws Exception {
    Path alone = away.resolve("sandpiper.printer.json");
    Files.copy(Path.of("demo-profiles/sandpiper.printer.json"), alone);
    CommandRun run = CommandRun.of("check", alone.toString());
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("GW-F022  build.folder")
        .doesNotContain("not read: " + away.resolve("rookery-2.3") + ":");
    Path empty = Files.createDirectory(away.resolve("empty"));
    CommandRun given = CommandRun.of("check", alone.toString(), "--folder", empty.toString());
    assertThat(given.out()).contains("GW-F022  build.folder", "no C header");
    CommandRun there =
        CommandRun.of("check", alone.toString(), "--folder", "demo-profiles/rookery-2.3");
    assertThat(there.out()).doesNotContain("GW-F022");
  }

  @Test
  void aRulesPageIsADocumentWhereOneIsAskedFor() {
    var page = CommandRun.of("check", "--page", "GW-M001", "--format", "json").json();
    assertThat(page.path("slug").asString()).isEqualTo("steps-disagree-with-drive");
    assertThat(page.path("page").asString()).contains("## Remedy");
  }

  @Test
  void everyRuleHasAPageInTheTerminal() {
    for (var rule : dev.gantrywright.rules.book.StandardBook.open().rules()) {
      String page = RulePage.text(rule, 80);
      assertThat(page.replaceAll("\\s+", " ")).as(rule.id()).contains(rule.summary());
      assertThat(page.lines().filter(line -> !line.startsWith("|")))
          .as(rule.id())
          .hasSizeGreaterThan(8)
          .allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
      assertThat(dev.gantrywright.rules.RulePages.help(rule.family(), rule.slug()))
          .as(rule.id())
          .get()
          .asString()
          .hasSizeGreaterThan(60);
    }
  }

  @Test
  void anUnknownRuleAndAMissingProfileAreOneLine() {
    CommandRun rule = CommandRun.of("check", "--page", "steps-disagree-with-drives");
    assertThat(rule.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(rule.err().lines()).hasSize(1).first().asString().contains("disagree-with-drive");
    CommandRun none = CommandRun.of("check");
    assertThat(none.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(none.err().lines()).hasSize(1).first().asString().contains("no profile");
  }
}
