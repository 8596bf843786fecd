package dev.gantrywright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every handbook row that the program has something to say about, source beside it. */
class HandbookValuesTest {
  private static final Map<String, Map<String, String>> CORRECTIONS =
      CsvTable.read("handbook-corrections.csv").stream()
          .collect(Collectors.toMap(row -> row.get("id"), Function.identity()));

  static Stream<Arguments> used() {
    return HandbookRow.all().stream()
        .filter(row -> HandbookGroups.use(row) instanceof Use.Value)
        .map(
            row -> Arguments.of(row.id() + ": " + row.quantity() + " [" + row.source() + "]", row));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("used")
  void theProgramGivesTheValueOfTheSource(String name, HandbookRow row) {
    Use.Value use = (Use.Value) HandbookGroups.use(row);
    if (use.value() instanceof String text) {
      assertThat(text).as(name).isEqualTo(row.expected());
      return;
    }
    String wanted = row.expected();
    String tolerance = row.tolerance();
    if (row.misprinted()) {
      Map<String, String> correction = CORRECTIONS.get(row.id());
      assertThat(correction).as("%s needs a line in handbook-corrections.csv", name).isNotNull();
      wanted = correction.get("expected");
      tolerance = correction.get("tolerance");
    }
    double expected = HandbookRow.numberOf(wanted);
    assertThat((double) use.value())
        .as(name)
        .isCloseTo(expected, within(allowed(tolerance, expected)));
  }

  private static double allowed(String tolerance, double expected) {
    if (tolerance.startsWith("abs:")) {
      return Double.parseDouble(tolerance.substring(4)) + 1e-12;
    }
    if (tolerance.startsWith("rel:")) {
      return Double.parseDouble(tolerance.substring(4)) * Math.abs(expected);
    }
    assertThat(tolerance).isEqualTo("exact");
    return 1e-12 * Math.max(1e-6, Math.abs(expected));
  }

  @Test
  void atLeastSevenHundredRowsAreUsed() {
    assertThat(used().count()).isGreaterThanOrEqualTo(700);
  }

  @Test
  void everyMisprintIsCorrectedAndNothingElse() {
    List<String> misprinted =
        HandbookRow.all().stream().filter(HandbookRow::misprinted).map(HandbookRow::id).toList();
    assertThat(CORRECTIONS.keySet()).containsExactlyInAnyOrderElementsOf(misprinted);
  }
}
