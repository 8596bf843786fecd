package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.names.LearningTable.Row;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** {@code mvn -q test -Dtest=LearningTableTest} prints the table that docs/names.md explains. */
class LearningTableTest {
  private static List<Row> rows;

  @BeforeAll
  static void learn() {
    rows = LearningTable.styles().stream().map(LearningTable::row).toList();
    System.out.println(LearningTable.text(rows));
  }

  @Test
  void thereAreEnoughStylesAndEnoughHeldOut() {
    assertThat(rows).hasSizeGreaterThanOrEqualTo(12);
    assertThat(rows.stream().filter(Row::heldOut)).hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void heldOutFirmwareIsReadRightAtFirstGuess() {
    int fields = rows.stream().filter(Row::heldOut).mapToInt(Row::fields).sum();
    int right = rows.stream().filter(Row::heldOut).mapToInt(Row::right).sum();
    assertThat(100.0 * right / fields).isGreaterThanOrEqualTo(95);
  }

  @Test
  void noAnswerIsConfidentAndWrong() {
    for (Row row : rows) {
      assertThat(row.sureWrong()).as(row.style()).isEmpty();
    }
  }

  @Test
  void tunedFirmwareStaysRight() {
    for (Row row : rows) {
      if (!row.heldOut()) {
        assertThat(row.wrong()).as(row.style()).isEmpty();
        assertThat(row.meaningsWrong()).as(row.style()).isEmpty();
      }
    }
  }

  @Test
  void meaningsOfHeldOutFirmwareAreRight() {
    int asked = rows.stream().filter(Row::heldOut).mapToInt(Row::meaningsAsked).sum();
    int right = rows.stream().filter(Row::heldOut).mapToInt(Row::meanings).sum();
    assertThat(100.0 * right / asked).isGreaterThanOrEqualTo(95);
  }
}
