package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The gathered pages in {@code docs/rules} are those that the rules make now. */
class RuleDocsTest {
  private static final Path DOCS = Path.of("docs", "rules");
  private static final Map<String, String> MADE = RuleDocs.of(StandardBook.open().rules());

  @BeforeAll
  static void writeWhereAsked() throws Exception {
    if (Boolean.getBoolean("rules.write")) {
      Files.createDirectories(DOCS);
      for (Map.Entry<String, String> doc : MADE.entrySet()) {
        Files.writeString(DOCS.resolve(doc.getKey()), doc.getValue());
      }
    }
  }

  @Test
  void theGatheredPagesAreUpToDate() {
    for (Map.Entry<String, String> doc : MADE.entrySet()) {
      assertThat(DOCS.resolve(doc.getKey())).content().isEqualToNormalizingNewlines(doc.getValue());
    }
  }

  @Test
  void nothingElseLiesBesideThem() throws Exception {
    Set<String> owed = new TreeSet<>(MADE.keySet());
    owed.add("README.md");
    owed.add("model-mutation.md");
    try (Stream<Path> files = Files.list(DOCS)) {
      assertThat(files.map(file -> file.getFileName().toString()).collect(Collectors.toSet()))
          .isEqualTo(owed);
    }
  }

  @Test
  void everyFindingLeadsToItsPage() {
    for (Rule rule : StandardBook.open().rules()) {
      String link = RulePages.link(rule);
      String doc = MADE.get(link.substring("docs/rules/".length(), link.indexOf('#')));
      assertThat(doc).contains("\n## " + link.substring(link.indexOf('#') + 1) + "\n");
    }
  }
}
