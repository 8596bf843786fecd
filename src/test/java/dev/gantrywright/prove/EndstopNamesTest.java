package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndstopNamesTest {
  private final EndstopNames names =
      new EndstopNames(List.of("xMin", "xMax", "yMax", "zMin", "z2Min"), Map.of("lid", "yMax"));

  @ParameterizedTest
  @CsvSource({
    "x_min, xMin",
    "X MIN, xMin",
    "xmin, xMin",
    "min x, xMin",
    "minx, xMin",
    "X-, xMin",
    "x+, xMax",
    "x maximum, xMax",
    "Endstop X max, xMax",
    "z2_min, z2Min",
    "z2min, z2Min",
    "LID, yMax",
    "x-max, xMax"
  })
  void isSure(String reported, String end) {
    assertThat(names.match(reported)).contains(new EndstopNames.Match(end, true));
  }

  @ParameterizedTest
  @CsvSource({"y, yMax", "Y, yMax", "z2, z2Min", "y stop, yMax"})
  void guessesTheOnlyEndOfAnAxis(String reported, String end) {
    assertThat(names.match(reported)).contains(new EndstopNames.Match(end, false));
  }

  @ParameterizedTest
  @CsvSource({"x", "probe", "min", "e_min", "-"})
  void asksWhereItCannotKnow(String reported) {
    assertThat(names.match(reported)).isEmpty();
  }

  @Test
  void whatTheUserSaidComesFirst() {
    EndstopNames told = new EndstopNames(List.of("xMin", "yMin"), Map.of("x_min", "yMin"));
    assertThat(told.match("X_MIN")).contains(new EndstopNames.Match("yMin", true));
  }
}
