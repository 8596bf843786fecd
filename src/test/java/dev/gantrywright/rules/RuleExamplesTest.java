package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.book.StandardBook;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs every fenced example of every page. */
class RuleExamplesTest {
  private static final RuleBook BOOK = StandardBook.open();

  static Stream<Arguments> bad() {
    return examples(true);
  }

  static Stream<Arguments> good() {
    return examples(false);
  }

  private static Stream<Arguments> examples(boolean bad) {
    return BOOK.rules().stream()
        .flatMap(
            rule ->
                Example.of(RulePages.text(rule).orElse("")).stream()
                    .filter(example -> example.bad() == bad)
                    .map(
                        example ->
                            Arguments.of(
                                rule.id() + " " + rule.slug() + ".md:" + example.line(),
                                rule,
                                example)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("good")
  void aGoodExampleIsSilent(String name, Rule rule, Example example) {
    assertThat(found(rule, Workshop.printer(example.printer(), example.patch()))).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad")
  void aBadExampleIsFoundAndRemedied(String name, Rule rule, Example example) throws Exception {
    CheckInput input = Workshop.printer(example.printer(), example.patch());
    List<Finding> found = found(rule, input);
    assertThat(found).extracting(Finding::path).contains(example.path());
    Finding finding =
        found.stream().filter(f -> f.path().equals(example.path())).findFirst().orElseThrow();
    Set<String> before = keys(BOOK.check(input));
    List<Remedy> remedies = finding.remedies().stream().filter(Remedy::applicable).toList();
    assertThat(example.fixed())
        .as("a fixed block for each applicable remedy of " + finding)
        .hasSameSizeAs(remedies);
    for (int at = 0; at < remedies.size(); at++) {
      Remedy remedy = remedies.get(at);
      CheckInput after = Remedies.apply(input, remedy);
      assertThat(keys(found(rule, after))).as(remedy.title()).doesNotContain(finding.key());
      assertThat(before)
          .as("findings before " + remedy.title())
          .containsAll(keys(BOOK.check(after)));
      assertThat(ProfileValues.tree(after.profile()))
          .as(remedy.title())
          .isEqualTo(
              ProfileValues.tree(Workshop.profile(example.printer(), example.fixed().get(at))));
      assertThat(Remedies.apply(after, remedy)).as("applied twice").isEqualTo(after);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad")
  void applyingAllSafeRemediesConverges(String name, Rule rule, Example example) throws Exception {
    CheckInput input = Workshop.printer(example.printer(), example.patch());
    Remedies.Outcome outcome = Remedies.applySafe(BOOK, input);
    assertThat(outcome.settled()).isTrue();
    assertThat(keys(BOOK.check(input))).containsAll(keys(BOOK.check(outcome.input())));
  }

  private static List<Finding> found(Rule rule, CheckInput input) {
    return BOOK.check(input).stream()
        .filter(finding -> finding.id().equals(rule.id()) || finding.path().equals(rule.id()))
        .toList();
  }

  private static Set<String> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).collect(Collectors.toSet());
  }
}
