package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.rules.book.StandardBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where each rule begins to speak: just inside its limit nothing, just outside a finding, and
 * nothing where a fact is unknown. The cases stand in {@code limits.txt}; the pages hold only the
 * examples that are worth reading.
 */
class RuleLimitsTest {
  private static final Path CASES = Path.of("src/test/resources/rules/limits.txt");
  private static final RuleBook BOOK = StandardBook.open();

  /**
   * One line.
   *
   * @param path where the finding stands; {@code silent} where there is none
   * @param holds what evidence and remedies hold
   */
  record Case(int line, String id, String printer, String path, String patch, List<String> holds) {
    @Override
    public String toString() {
      return "limits.txt:" + line + " " + id + " " + path;
    }
  }

  static Stream<Arguments> cases() throws IOException {
    return read().stream().map(one -> Arguments.of(one.toString(), one));
  }

  private static List<Case> read() throws IOException {
    List<String> lines = Files.readAllLines(CASES);
    List<Case> cases = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      String line = lines.get(at);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] parts = line.split(" \\| ");
      String[] head = parts[0].strip().split(" ", 3);
      cases.add(
          new Case(
              at + 1,
              head[0],
              head[1],
              head[2],
              parts[1],
              List.of(parts).subList(2, parts.length)));
    }
    return cases;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void aRuleSpeaksOnOneSideOfItsLimit(String name, Case one) {
    List<Finding> found = BOOK.only(one.id()).check(Workshop.printer(one.printer(), one.patch()));
    if (one.path().equals("silent")) {
      assertThat(found).isEmpty();
      return;
    }
    assertThat(found).extracting(Finding::path).contains(one.path());
    Finding finding =
        found.stream().filter(f -> f.path().equals(one.path())).findFirst().orElseThrow();
    assertThat(finding.id()).isEqualTo(one.id());
    String says =
        finding.evidence()
            + finding.remedies().stream()
                .map(remedy -> "\n" + remedy.safety().word() + ": " + remedy.title())
                .collect(Collectors.joining());
    assertThat(says)
        .satisfies(text -> one.holds().forEach(part -> assertThat(text).contains(part)));
  }

  @Test
  void everyCaseNamesARule() throws IOException {
    assertThat(BOOK.rules().stream().map(Rule::id).toList())
        .containsAll(read().stream().map(Case::id).toList());
  }
}
