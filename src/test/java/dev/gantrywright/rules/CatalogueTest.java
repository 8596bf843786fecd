package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.Fields;
import dev.gantrywright.rules.book.StandardBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every rule of the book owes: a page with a bad, a good and where promised a fixed example.
 */
class CatalogueTest {
  private static final Path PAGES = Path.of("src/main/resources/dev/gantrywright/rules");
  private static final List<Rule> RULES = StandardBook.open().rules();

  static Stream<Rule> rules() {
    return RULES.stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void aRuleHasAPageWithTheExamplesItOwes(Rule rule) {
    String page = RulePages.text(rule).orElse("");
    assertThat(page).as("page of " + rule.id()).isNotBlank();
    assertThat(RulePages.help(rule.family(), rule.slug()).orElse("")).hasSizeGreaterThan(80);
    List<Example> examples = Example.of(page);
    assertThat(examples).anyMatch(Example::bad).anyMatch(example -> !example.bad());
    boolean promises = rule.fix() == Rule.Fix.SAFE || rule.fix() == Rule.Fix.REVIEW;
    assertThat(examples.stream().anyMatch(example -> !example.fixed().isEmpty()))
        .as("a fixed block in the page of " + rule.id())
        .isEqualTo(promises);
    assertThat(page.contains("\n## Remedy\n")).as("remedy section").isEqualTo(promises);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theBestRemedyIsTheOneDeclared(Rule rule) {
    RuleBook book = StandardBook.open();
    Set<Safety> offered =
        Example.of(RulePages.text(rule).orElse("")).stream()
            .filter(Example::bad)
            .flatMap(
                example ->
                    book
                        .only(rule.id())
                        .check(Workshop.printer(example.printer(), example.patch()))
                        .stream())
            .filter(finding -> finding.id().equals(rule.id()))
            .flatMap(finding -> finding.remedies().stream())
            .map(Remedy::safety)
            .collect(Collectors.toSet());
    Rule.Fix best =
        offered.contains(Safety.SAFE)
            ? Rule.Fix.SAFE
            : offered.contains(Safety.REVIEW)
                ? Rule.Fix.REVIEW
                : offered.isEmpty() ? Rule.Fix.NONE : Rule.Fix.SHOW_ONLY;
    assertThat(best).as(rule.id()).isEqualTo(rule.fix());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void aRuleSaysWhatItIs(Rule rule) {
    assertThat(rule.id()).matches("GW-" + rule.family().letter() + "[0-9]{3}");
    assertThat(rule.slug()).matches("[a-z]+(-[a-z]+)*");
    assertThat(rule.summary()).isNotBlank().doesNotEndWith(".");
    assertThat(rule.source()).isNotBlank();
    assertThat(rule.reads()).isNotEmpty();
    assertThat(Fields.all())
        .as("what " + rule.id() + " reads")
        .satisfies(
            fields -> {
              for (String pattern : rule.reads()) {
                assertThat(fields)
                    .as(pattern)
                    .anyMatch(field -> meets(pattern.split("\\."), field.path().split("\\.")));
              }
            });
  }

  @Test
  void idsAndSlugsAreUnique() {
    assertThat(RULES).extracting(Rule::id).doesNotHaveDuplicates();
    assertThat(RULES).extracting(Rule::slug).doesNotHaveDuplicates();
  }

  @Test
  void everyPageBelongsToARule() throws IOException {
    Set<String> owed =
        RULES.stream()
            .map(rule -> rule.family().word() + "/" + rule.slug() + ".md")
            .collect(Collectors.toSet());
    try (Stream<Path> files = Files.walk(PAGES)) {
      assertThat(
              files
                  .filter(file -> file.toString().endsWith(".md"))
                  .map(file -> PAGES.relativize(file).toString().replace('\\', '/')))
          .containsExactlyInAnyOrderElementsOf(owed);
    }
  }

  private static boolean meets(String[] pattern, String[] field) {
    for (int at = 0; at < Math.min(pattern.length, field.length); at++) {
      if (pattern[at].equals("**")) {
        return true;
      }
      if (!pattern[at].equals("*") && !field[at].equals("*") && !pattern[at].equals(field[at])) {
        return false;
      }
    }
    return pattern.length == field.length;
  }
}
