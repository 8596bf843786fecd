package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Changes each field of both clean printers to plausible wrong values and counts which of them the
 * rule book notices. The table goes to {@code target/model-mutation.md}.
 */
class ModelMutationTest {
  private static final RuleBook BOOK = StandardBook.open();

  /** What became of one mutant. */
  private record Fate(Mutants.Mutant mutant, Level level, boolean refused) {
    boolean caught() {
      return level != null || refused;
    }
  }

  private static final List<Fate> FATES = new ArrayList<>();
  private static final List<Finding> FAULTS = new ArrayList<>();

  @BeforeAll
  static void mutate() {
    for (String name : Workshop.CLEAN) {
      CheckInput clean = Workshop.printer(name);
      Checked before = BOOK.run(clean);
      Set<Finding> known = Set.copyOf(before.findings());
      for (Mutants.Mutant mutant : Mutants.of(name, clean.profile())) {
        try {
          CheckInput wrong =
              clean.with(ProfileValues.with(clean.profile(), mutant.path(), mutant.wrong()));
          Checked after = BOOK.rerun(before, wrong, Set.of(mutant.path()));
          assertThat(after.findings())
              .as("re-run of the rules that read " + mutant.path())
              .isEqualTo(BOOK.run(wrong).findings());
          after.findings().stream()
              .filter(finding -> finding.family() == Family.INTERNAL)
              .forEach(FAULTS::add);
          FATES.add(
              new Fate(
                  mutant,
                  after.findings().stream()
                      .filter(finding -> !known.contains(finding))
                      .map(Finding::level)
                      .findFirst()
                      .orElse(null),
                  false));
        } catch (ProfileProblem outOfRange) {
          FATES.add(new Fate(mutant, null, true));
        }
      }
    }
  }

  @Test
  void noRuleFailsOnAnyMutant() {
    assertThat(FAULTS).isEmpty();
  }

  @Test
  void nineInTenMutantsAreNoticed() throws Exception {
    Path table = Path.of("target", "model-mutation.md");
    Files.createDirectories(table.getParent());
    Files.writeString(table, table());
    long caught = FATES.stream().filter(Fate::caught).count();
    assertThat(FATES).hasSizeGreaterThanOrEqualTo(300);
    assertThat(caught * 100.0 / FATES.size())
        .as("percent noticed; see " + table)
        .isGreaterThanOrEqualTo(90);
  }

  private static String table() {
    Map<String, List<Fate>> byField =
        FATES.stream()
            .collect(
                Collectors.groupingBy(
                    fate -> fate.mutant().pattern(), TreeMap::new, Collectors.toList()));
    StringBuilder text = new StringBuilder();
    text.append(
        "| field | mutants | error | warning | note | refused | missed | missed values |\n");
    text.append("| --- | ---: | ---: | ---: | ---: | ---: | ---: | --- |\n");
    byField.forEach((field, fates) -> text.append(row(field, fates)));
    text.append(row("**all**", FATES));
    return text.toString();
  }

  private static String row(String name, List<Fate> fates) {
    List<Fate> missed = fates.stream().filter(fate -> !fate.caught()).toList();
    String values =
        name.startsWith("*")
            ? ""
            : missed.stream()
                .map(
                    f ->
                        f.mutant().printer().charAt(0)
                            + " "
                            + f.mutant().path().replaceFirst("^[a-z]+\\.", "")
                            + " "
                            + f.mutant().was()
                            + " to "
                            + f.mutant().wrong())
                .collect(Collectors.joining("; "));
    return "| %s | %d | %d | %d | %d | %d | %d | %s |%n"
        .formatted(
            name,
            fates.size(),
            count(fates, Level.ERROR),
            count(fates, Level.WARNING),
            count(fates, Level.NOTE),
            fates.stream().filter(Fate::refused).count(),
            missed.size(),
            values);
  }

  private static long count(List<Fate> fates, Level level) {
    return fates.stream().filter(fate -> fate.level() == level).count();
  }
}
