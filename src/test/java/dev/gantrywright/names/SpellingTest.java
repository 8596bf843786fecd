package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.DoubleNode;
import tools.jackson.databind.node.StringNode;

class SpellingTest {
  private static final Map<String, String> MACROS =
      Map.of("RAIL_HIGH", "1", "RAIL_LOW", "0", "BELT", "(200 * 16 / 40.0)");

  private static Spelling spelling(String path, String meaning, String unit) {
    NameEntry entry = NameEntry.plain("M", null, "f.h", 1, 1, true, null);
    return new Spelling(path, entry.meaning(meaning, Map.of()).unit(unit), SpellingTest::macro);
  }

  private static Optional<String> macro(String name) {
    return Optional.ofNullable(MACROS.get(name));
  }

  private static String spelled(Spelling spelling, JsonNode value, String current) {
    Spelled spelled = spelling.spell(value, current);
    return spelled instanceof Spelled.Text text ? text.text() : spelled.getClass().getSimpleName();
  }

  @ParameterizedTest
  @CsvSource({
    "inverted, true, false, true",
    "inverted, false, 1, 0",
    "inverted, true, FALSE, TRUE",
    "inverted, true, OFF, ON",
    "not-inverted, true, true, false",
    "active-low, true, 0, 1",
    "active-high, true, 1, 0",
    "active-level, true, HIGH, LOW",
    "active-level, false, low, high",
    "active-level, true, 1, 0",
    "normally-closed, true, true, false",
    "normally-closed, false, 0, 1",
    "contact, true, NC, NO",
    "contact, false, no, nc",
    "sign, true, 1, -1",
    "sign, true, +1, -1",
    "sign, false, -1, 1",
    "sign, false, (-1), (1)",
    "inverted, true, (0), (1)",
    "inverted, true, true, AlreadySo",
    "active-level, true, RAIL_LOW, AlreadySo",
    "active-level, true, RAIL_HIGH, Not",
    "unknown, true, false, Not",
    "inverted, true, '', On",
    "inverted, false, '', Off",
    "not-inverted, true, '', Off",
  })
  void yesAndNo(String meaning, boolean value, String current, String expected) {
    Spelling spelling = spelling("endstops.xMin.inverted", meaning, null);
    assertThat(spelled(spelling, BooleanNode.valueOf(value), current)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "axes.x.stepsPerMm, , 160, 80, 160",
    "axes.x.stepsPerMm, , 80, BELT, AlreadySo",
    "axes.x.stepsPerMm, , 160, BELT, 160",
    "axes.x.stepsPerMm, , 160, 80.0f, 160.0f",
    "axes.x.stepsPerMm, , 415.2, 93, 415.2",
    "axes.x.stepsPerMm, , 415.2, 93f, 415.2f",
    "axes.x.stepsPerMm, , 160, (80), (160)",
    "axes.x.stepsPerMm, , 160, 80UL, 160UL",
    "axes.x.stepsPerMm, , 80.5, 80UL, 80.5",
    "axes.x.travelMin, , -2, 0, -2",
    "axes.x.driver.current, mA, 0.8, 600, 800",
    "axes.x.driver.current, mA, 0.6, 600, AlreadySo",
    "axes.x.maxSpeed, mm/min, 200, 9000, 12000",
    "axes.x.maxSpeed, mm/min, 33.3, 9000, 1998",
    "axes.x.maxSpeed, mA, 200, 9000, Not",
    "axes.x.stepsPerMm, , 0.1, 80, 0.1",
    "axes.x.stepsPerMm, , 160, ((uint16_t)80), ((uint16_t)160)",
    "axes.x.stepsPerMm, , 160, (float) 80.0f, (float) 160.0f",
  })
  void numbers(String path, String unit, double value, String current, String expected) {
    Spelling spelling = spelling(path, null, unit);
    assertThat(spelled(spelling, DoubleNode.valueOf(value), current)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "board.constant, NEST_B, NEST_A, NEST_B",
    "board.constant, NEST_A, NEST_A, AlreadySo",
    "name, Heron, '\"none\"', '\"Heron\"'",
    "name, 'say \"x\"', '\"none\"', '\"say \\\"x\\\"\"'",
    "heaters.bed.sensor, ntc-100k-3950, SENSOR_A, Not",
    "kinematics, corexy, KIN_A, Not",
  })
  void texts(String path, String value, String current, String expected) {
    assertThat(spelled(spelling(path, null, null), StringNode.valueOf(value), current))
        .isEqualTo(expected);
  }

  @Test
  void theListOfValuesGoesFirst() {
    NameEntry entry =
        NameEntry.plain("M", null, "f.h", 1, 1, true, null)
            .meaning(null, Map.of("cartesian", "KIN_A", "corexy", "7"));
    Spelling spelling = new Spelling("kinematics", entry, SpellingTest::macro);
    assertThat(spelled(spelling, StringNode.valueOf("cartesian"), "7")).isEqualTo("KIN_A");
    assertThat(spelled(spelling, StringNode.valueOf("corexy"), "0x7")).isEqualTo("AlreadySo");
    assertThat(spelling.read("KIN_A")).contains(StringNode.valueOf("cartesian"));
    assertThat(spelled(spelling, StringNode.valueOf("delta"), "7")).isEqualTo("Not");
  }

  @Property
  void whatIsSpelledIsReadBack(@ForAll @DoubleRange(min = 0.01, max = 100000) double value) {
    double told = Double.parseDouble(NumberSpelling.digits(value));
    for (String current : new String[] {"80", "80.0f", "(1)", "{", "12U"}) {
      Spelling spelling = spelling("axes.x.maxSpeed", null, "mm/min");
      String text = spelled(spelling, DoubleNode.valueOf(told), current);
      if (text.equals("AlreadySo")) {
        continue;
      }
      double back = spelling.read(text).orElseThrow().doubleValue();
      assertThat(back).isCloseTo(told, org.assertj.core.data.Percentage.withPercentage(1e-6));
    }
  }
}
