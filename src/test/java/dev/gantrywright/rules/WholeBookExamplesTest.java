package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.rules.book.StandardBook;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs every bad example against the whole book: a remedy of one rule must not upset another. */
class WholeBookExamplesTest {
  private static final RuleBook BOOK = StandardBook.open();

  static Stream<Arguments> bad() {
    return RuleExamplesTest.bad();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad")
  void aRemedyAddsNoOtherFinding(String name, Rule rule, Example example) throws Exception {
    CheckInput input = Workshop.printer(example.printer(), example.patch());
    Checked before = BOOK.run(input);
    Set<String> known = keys(before.findings());
    for (Finding finding : BOOK.only(rule.id()).check(input)) {
      for (Remedy remedy : finding.remedies()) {
        if (remedy.applicable()) {
          assertThat(known)
              .as("findings before " + remedy.title())
              .containsAll(keys(BOOK.check(Remedies.apply(input, remedy))));
        }
      }
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

  private static Set<String> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).collect(Collectors.toSet());
  }
}
