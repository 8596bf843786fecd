package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.names.WordReader.Word;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitReaderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a second port, for a panel | ''",
        "second port | ''",
        "First at the lower end, second: at the upper | ''",
        "second motor of z, mA | mA",
        "the second axis, mm/min | mm/min",
        "segundo puerto | ''",
        "mm/min, second touch | mm/min",
        "wait, in second | s",
        "time (second) | s",
        "second | s",
        "1 second | s",
        "30 seconds of rest | s",
        "2 secondes | s",
        "mm per second | mm/s",
        "mm per second squared | mm/s²",
        "bits per second | bit/s",
        "bit per secondo | bit/s",
        "Sekunde bis zur Ruhe | s",
        "ms | s",
      })
  void theUnitThatACommentNames(String comment, String unit) {
    assertThat(UnitReader.ofComment(comment)).isEqualTo(unit);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "console second port | ''",
        "second port | ''",
        "second motor ma | mA",
        "max feed mm per second | mm/s",
        "max feed mm per minute | mm/min",
        "ramp mm per second squared | mm/s²",
        "ramp mm per s2 | mm/s²",
        "host bits per second | bit/s",
        "rest seconds | s",
        "steps per mm | steps/mm",
      })
  void theUnitThatANameNames(String name, String unit) {
    List<Word> words =
        Arrays.stream(name.split(" ")).map(text -> new Word(text, List.of())).toList();
    assertThat(UnitReader.ofName(words)).isEqualTo(unit);
  }
}
