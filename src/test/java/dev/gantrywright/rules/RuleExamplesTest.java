package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.book.StandardBook;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs every fenced example of every page against its own rule. */
class RuleExamplesTest {
  private static final RuleBook BOOK = StandardBook.open();

  static Stream<Arguments> bad() {
    return examples(true);
  }

  static Stream<Arguments> good() {
    return examples(false);
  }

  static Stream<Arguments> examples(boolean bad) {
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
    assertThat(BOOK.only(rule.id()).check(Workshop.printer(example.printer(), example.patch())))
        .isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad")
  void aBadExampleIsFoundAndRemedied(String name, Rule rule, Example example) throws Exception {
    RuleBook only = BOOK.only(rule.id());
    CheckInput input = Workshop.printer(example.printer(), example.patch());
    List<Finding> found = only.check(input);
    assertThat(found).extracting(Finding::path).contains(example.path());
    Finding finding =
        found.stream().filter(f -> f.path().equals(example.path())).findFirst().orElseThrow();
    assertThat(finding.level()).isEqualTo(rule.level());
    assertThat(Example.said(rule, finding)).as("what the page shows").isEqualTo(example.says());
    List<Remedy> remedies = finding.remedies().stream().filter(Remedy::applicable).toList();
    assertThat(example.fixed())
        .as("a fixed block for each applicable remedy of " + finding)
        .hasSameSizeAs(remedies);
    for (int at = 0; at < remedies.size(); at++) {
      Remedy remedy = remedies.get(at);
      CheckInput after = Remedies.apply(input, remedy);
      assertThat(only.check(after))
          .as(remedy.title())
          .extracting(Finding::key)
          .doesNotContain(finding.key());
      assertThat(ProfileValues.tree(after.profile()))
          .as(remedy.title())
          .isEqualTo(
              ProfileValues.tree(Workshop.profile(example.printer(), example.fixed().get(at))));
      assertThat(Remedies.apply(after, remedy)).as("applied twice").isEqualTo(after);
    }
  }
}
