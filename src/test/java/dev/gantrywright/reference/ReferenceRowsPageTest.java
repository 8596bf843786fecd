package dev.gantrywright.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Keeps the page that says which reference row is used where, and why the rest are not. */
class ReferenceRowsPageTest {
  private static final Path PAGE = Path.of("docs/reference-rows.md");

  @Test
  void thePageSaysWhatTheTestsDo() throws IOException {
    String page = page();
    if (Boolean.getBoolean("docs.write")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE).replace("\r\n", "\n"))
        .as("stale: run mvn test -Dtest=ReferenceRowsPageTest -Ddocs.write=true")
        .isEqualTo(page);
  }

  private static String page() {
    Map<String, List<HandbookRow>> groups =
        HandbookRow.all().stream()
            .collect(Collectors.groupingBy(HandbookRow::group, TreeMap::new, Collectors.toList()));
    StringBuilder page = new StringBuilder();
    page.append("# Which published values are tested, and by what\n\n");
    page.append("Made and checked by `ReferenceRowsPageTest`");
    page.append(" (`-Ddocs.write=true` writes it anew).\n\n");
    int rows = CsvTable.read("reference-values.csv").size();
    page.append("All ").append(rows).append(" rows of `reference-values.csv` go through the verb ");
    page.append("`compute` and its JSON (`ComputeReferenceTest`).\n\n");
    page.append("Rows of `handbook-values.csv` (`HandbookValuesTest`):\n\n");
    page.append("| group | rows | used | not used |\n| --- | --: | --: | --: |\n");
    long all = 0;
    long allUsed = 0;
    for (Map.Entry<String, List<HandbookRow>> group : groups.entrySet()) {
      long used = group.getValue().stream().filter(ReferenceRowsPageTest::used).count();
      all += group.getValue().size();
      allUsed += used;
      line(page, group.getKey(), group.getValue().size(), used);
    }
    line(page, "all", all, allUsed);
    groups.forEach((name, group) -> section(page, name, group));
    return page.toString();
  }

  private static void line(StringBuilder page, String name, long rows, long used) {
    page.append(String.format("| %s | %d | %d | %d |\n", name, rows, used, rows - used));
  }

  private static boolean used(HandbookRow row) {
    return HandbookGroups.use(row) instanceof Use.Value;
  }

  private static void section(StringBuilder page, String name, List<HandbookRow> rows) {
    Map<String, List<String>> used = new LinkedHashMap<>();
    Map<String, List<String>> unused = new LinkedHashMap<>();
    for (HandbookRow row : rows) {
      Use use = HandbookGroups.use(row);
      if (use instanceof Use.Value value) {
        String key = "`" + row.formula() + "` | `" + value.by() + "`";
        used.computeIfAbsent(key, k -> new java.util.ArrayList<>()).add(row.id());
      } else if (use instanceof Use.None none) {
        unused.computeIfAbsent(none.why(), k -> new java.util.ArrayList<>()).add(row.id());
      }
    }
    page.append("\n## ").append(name).append('\n');
    if (!used.isEmpty()) {
      page.append("\n| formula | given by | rows |\n| --- | --- | --- |\n");
      used.forEach((key, ids) -> page.append("| " + key + " | " + spans(ids) + " |\n"));
    }
    if (!unused.isEmpty()) {
      page.append("\nNot used:\n\n");
      unused.forEach((why, ids) -> page.append("- " + why + ": " + spans(ids) + "\n"));
    }
  }

  /** "G01-001, G01-004 to G01-007": neighbours in the list are joined. */
  private static String spans(List<String> ids) {
    if (ids.size() <= 4) {
      return String.join(", ", ids);
    }
    return ids.size() + " from " + ids.get(0) + " to " + ids.get(ids.size() - 1);
  }
}
