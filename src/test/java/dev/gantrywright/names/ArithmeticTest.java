package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArithmeticTest {
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "80, 80",
        "(80), 80",
        "-1, -1",
        "80.5f, 80.5",
        "0x10, 16",
        "1e3, 1000",
        "115200UL, 115200",
        "200*16/40, 80",
        "200*16/40.0, 80",
        "7/2, 3",
        "-7/2, -3",
        "7/2.0, 3.5",
        "7 % 4, 3",
        "(float)(7)/2, 3.5",
        "2 + 3 * 4, 14",
        "(2 + 3) * 4, 20",
        "- -3, 3",
        ".5, 0.5",
        "((uint16_t)900), 900",
        "(unsigned long) 250000UL, 250000",
        "(int)7.9, 7",
        "(double)96.5, 96.5",
        "((float)(200 * 16) / (2.0f * 20)), 80",
        "250'000, 250000",
        "0x3'E8, 1000",
      })
  void numbers(String text, double expected) {
    assertThat(Arithmetic.of(text)).hasValue(expected);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "x",
        "1 +",
        "1/0",
        "\"8\"",
        "true",
        "{1}",
        "1 2",
        "0xZ",
        "1..2",
        "(tern_t)8",
        "1'"
      })
  void notNumbers(String text) {
    assertThat(Arithmetic.of(text)).isEmpty();
  }

  @Test
  void namesStandForTheirReplacement() {
    Map<String, String> macros = Map.of("A", "B * 2", "B", "(3)", "LOOP", "LOOP + 1");
    assertThat(Arithmetic.of("A + 1", name -> Optional.ofNullable(macros.get(name)))).hasValue(7);
    assertThat(Arithmetic.of("LOOP", name -> Optional.ofNullable(macros.get(name)))).isEmpty();
  }

  @Property
  void whatIsWrittenIsRead(@ForAll int whole, @ForAll boolean braced, @ForAll boolean suffixed) {
    String text = whole + (suffixed ? "L" : "");
    assertThat(Arithmetic.of(braced ? "((" + text + "))" : text)).hasValue(whole);
  }

  @Property
  void aSumIsThatOfItsParts(@ForAll short a, @ForAll short b) {
    assertThat(Arithmetic.of(a + " + (" + b + ")")).hasValue(a + b);
    assertThat(Arithmetic.of("(int)" + a + " * " + b)).hasValue((double) a * b);
  }

  @Property
  void neverFails(@ForAll @StringLength(max = 30) String text) {
    assertThat(Arithmetic.of(text)).isNotNull();
  }
}
