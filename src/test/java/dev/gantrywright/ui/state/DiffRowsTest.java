package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DiffRowsTest {
  private static DiffRow same(int line, String faded) {
    return new DiffRow(DiffRow.Kind.SAME, "a.h", line, "x", "x", "", "", faded);
  }

  private static DiffRow changed(int line, String path, String cause, String faded) {
    return new DiffRow(DiffRow.Kind.CHANGED, "a.h", line, "x", "y", path, cause, faded);
  }

  @Test
  void aChangedLineHasItsCauseInTheRowBelow() {
    DiffRow line = changed(4, "serial.baud", "Baud rate 250 000", "");
    List<DiffRow> rows = DiffRows.withReasons(List.of(same(3, ""), line, same(5, "")));
    assertThat(rows).hasSize(4);
    assertThat(rows.get(1)).isEqualTo(line);
    assertThat(rows.get(2).kind()).isEqualTo(DiffRow.Kind.REASON);
    assertThat(rows.get(2).cause()).isEqualTo("Baud rate 250 000");
    assertThat(rows.get(2).faded()).isEmpty();
    assertThat(DiffRows.places(rows)).containsEntry("serial.baud", 1);
  }

  @Test
  void linesThatAreNotCompiledHaveTheirReasonOnceAboveThem() {
    List<DiffRow> rows =
        DiffRows.withReasons(
            List.of(same(1, ""), same(2, "A is 0"), same(3, "A is 0"), same(4, "B is 0")));
    assertThat(rows).extracting(DiffRow::cause).containsExactly("", "A is 0", "", "", "B is 0", "");
    assertThat(rows).extracting(DiffRow::line).containsExactly(1, 2, 2, 3, 4, 4);
  }

  @Test
  void aLineThatChangesAndIsNotCompiledHasBothReasons() {
    List<DiffRow> rows = DiffRows.withReasons(List.of(changed(7, "name", "Name Heron", "A is 0")));
    assertThat(rows)
        .extracting(DiffRow::cause)
        .containsExactly("A is 0", "Name Heron", "Name Heron");
    assertThat(rows).extracting(DiffRow::path).containsExactly("", "name", "name");
  }
}
