package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The gathered pages in {@code docs/rules} are those that the rules make now. */
class RuleDocsTest {
  private static final Path DOCS = Path.of("docs", "rules");
  private static Map<String, String> made;

  @BeforeAll
  static void writeWhereAsked() throws Exception {
    RuleBook book = StandardBook.open();
    if (Boolean.getBoolean("rules.write")) {
      RuleDocs.writeFindings(book);
    }
    made = RuleDocs.of(book.rules());
    if (Boolean.getBoolean("rules.write")) {
      Files.createDirectories(DOCS);
      for (Map.Entry<String, String> doc : made.entrySet()) {
        Files.writeString(DOCS.resolve(doc.getKey()), doc.getValue());
      }
    }
  }

  @Test
  void theGatheredPagesAreUpToDate() {
    for (Map.Entry<String, String> doc : made.entrySet()) {
      assertThat(DOCS.resolve(doc.getKey())).content().isEqualToNormalizingNewlines(doc.getValue());
    }
  }

  @Test
  void nothingElseLiesBesideThem() throws Exception {
    Set<String> owed = new TreeSet<>(made.keySet());
    owed.add("README.md");
    owed.add("model-mutation.md");
    owed.add("families.md");
    try (Stream<Path> files = Files.list(DOCS)) {
      assertThat(files.map(file -> file.getFileName().toString()).collect(Collectors.toSet()))
          .isEqualTo(owed);
    }
  }

  @Test
  void theTableOfFaultsNamesEveryRuleAndNoOther() throws Exception {
    Set<String> named = new TreeSet<>();
    Matcher links =
        Pattern.compile("\\[(GW-[A-Z]\\d+)\\]\\(([a-z]+\\.md)#([a-z0-9-]+)\\)")
            .matcher(Files.readString(DOCS.resolve("families.md")));
    while (links.find()) {
      named.add(links.group(1));
      assertThat(made.get(links.group(2)))
          .as(links.group())
          .contains("\n## " + links.group(3) + "\n");
    }
    assertThat(named)
        .isEqualTo(
            StandardBook.open().rules().stream()
                .map(Rule::id)
                .collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  void everyFindingLeadsToItsPage() {
    for (Rule rule : StandardBook.open().rules()) {
      String link = RulePages.link(rule);
      String doc = made.get(link.substring("docs/rules/".length(), link.indexOf('#')));
      assertThat(doc).contains("\n## " + link.substring(link.indexOf('#') + 1) + "\n");
    }
  }
}
