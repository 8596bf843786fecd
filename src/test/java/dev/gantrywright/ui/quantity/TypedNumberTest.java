package dev.gantrywright.ui.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedNumberTest {
  private final TypedNumber typed = new TypedNumber(Units.shipped());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "80            | steps/mm | 80",
        "80 steps/mm   | steps/mm | 80",
        "80/mm         | steps/mm | 80",
        "0,8 A         | A        | 0.8",
        "800 mA        | A        | 0.8",
        "800mA         | A        | 0.8",
        ".8            | A        | 0.8",
        "12 mm/s       | mm/s     | 12",
        "720 mm/min    | mm/s     | 12",
        "100 mm/min    | mm/s     | 1.66666666667",
        "1.5 m/s²      | mm/s²    | 1500",
        "1500 mm/s^2   | mm/s²    | 1500",
        "1 in          | mm       | 25.4",
        "110 mohm      | Ω        | 0.11",
        "110 mΩ        | Ω        | 0.11",
        "4.7k          | Ω        | 4700",
        "4,7 kΩ        | Ω        | 4700",
        "300 K         | °C       | 26.85",
        "250           | °C       | 250",
        "-5 °C         | °C       | -5",
        "−5            | mm       | -5",
        "1e3           | mm       | 1000",
        "1 500         | mm/s²    | 1500",
        "1.234,5       | mm       | 1234.5",
        "1,234.5       | mm       | 1234.5",
        "16 MHz        | Hz       | 16000000",
        "2 mH          | mH       | 2",
        "350 µH        | mH       | 0.35",
      })
  void readsWhatPeopleType(String text, String unit, double expected) {
    assertThat(typed.read(text, unit, false)).isEqualTo(new Reading.Number(expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "115200        | bit/s    | 115200",
        "115,200       | bit/s    | 115200",
        "115.200,0     | bit/s    | 115200",
        "115 200 baud  | bit/s    | 115200",
        "250k          | bit/s    | 250000",
        "1,000,000     | bit/s    | 1000000",
        "0.9°          | steps    | 400",
        "1.8 deg       | steps    | 200",
        "1,8°          | steps    | 200",
        "20 teeth      | teeth    | 20",
        "20T           | teeth    | 20",
      })
  void readsWholeNumbers(String text, String unit, double expected) {
    assertThat(typed.read(text, unit, true)).isEqualTo(new Reading.Number(expected));
  }

  @Test
  void takesMicrosteppingAsItIsSpoken() {
    assertThat(typed.read("1/16", "", true)).isEqualTo(new Reading.Number(16));
  }

  @Test
  void nothingTypedIsNotANumber() {
    assertThat(typed.read("   ", "mm", false)).isEqualTo(new Reading.Nothing());
  }

  @Test
  void asksWhereACommaCouldMeanTwoThings() {
    assertThat(typed.read("1,500", "mm/s²", false))
        .isEqualTo(new Reading.Unread("“1,500” may be 1500 or 1.500: type one of these"));
  }

  @Test
  void saysWhatItCouldNotReadAndWhatToType() {
    assertThat(typed.read("fast", "mm/s", false))
        .isEqualTo(new Reading.Unread("“fast” is not a number: type for example 12 mm/s"));
    assertThat(typed.read("12 A", "mm/s", false))
        .isEqualTo(new Reading.Unread("unit “A” not known here: use mm/s, mm/min, m/s, m/min"));
    assertThat(typed.read("16.5", "teeth", true))
        .isEqualTo(new Reading.Unread("“16.5” gives 16.5: a whole number is needed"));
    assertThat(typed.read("3 apples", "", false))
        .isEqualTo(new Reading.Unread("unit “apples” not known here: type the number alone"));
  }

  @Test
  void aStepAngleOfNothingIsOutOfReach() {
    assertThat(typed.read("0°", "steps", true))
        .isEqualTo(new Reading.Unread("“0” is out of reach"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.2.3x", "1,,2", "..", "--1", "1e", "£5", "12..5", "\u0000", "e9"})
  void refusesRubbishInOneLine(String rubbish) {
    assertThat(typed.read(rubbish, "mm", false))
        .isInstanceOfSatisfying(
            Reading.Unread.class, unread -> assertThat(unread.why()).doesNotContain("\n"));
  }

  /** Whatever the window shows, it can read back. */
  @Property(tries = 500)
  void readsBackWhatIsShown(@ForAll @DoubleRange(min = -1e7, max = 1e7) double value) {
    Reading reading = typed.read(Shown.with(value, "mm"), "mm", false);
    assertThat(reading).isInstanceOf(Reading.Number.class);
    assertThat(((Reading.Number) reading).value())
        .isCloseTo(value, within(Math.max(1e-8, Math.abs(value) * 1e-8)));
  }

  @Property(tries = 500)
  void readsBackWholeNumbersHoweverTheyAreGrouped(@ForAll @IntRange(max = 99_999_999) int value) {
    for (String shown :
        new String[] {
          Integer.toString(value), Shown.grouped(value), String.format("%,d", value),
        }) {
      assertThat(typed.read(shown, "bit/s", true)).isEqualTo(new Reading.Number(value));
    }
  }

  @Property(tries = 1000)
  void neverThrows(@ForAll String anything) {
    assertThat(typed.read(anything, "mm", false)).isNotNull();
    assertThat(typed.read(anything, "", true)).isNotNull();
  }
}
