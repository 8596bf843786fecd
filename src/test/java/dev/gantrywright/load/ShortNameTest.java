package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of the 8.3 form, after the FAT specification. */
class ShortNameTest {
  @ParameterizedTest
  @CsvSource({
    "FULMAR.IMG, true",
    "README, true",
    "FW_1.BIN, true",
    "a.b, true",
    "A~1.{}, true",
    "FIRMWARE1.BIN, false",
    "A.B.C, false",
    "CONFIG.JSON, false",
    ".BIN, false",
    "NAME., false",
    "FW+1.BIN, false",
    "FW 1.BIN, false",
    "Ü.BIN, false"
  })
  void isOfTheForm(String name, boolean valid) {
    assertThat(ShortName.valid(name)).isEqualTo(valid);
    assertThat(ShortName.fault(name).isEmpty()).isEqualTo(valid);
  }

  @Test
  void anEmptyNameIsNone() {
    assertThat(ShortName.valid("")).isFalse();
  }

  @Property(tries = 200)
  void lettersOfTheRightLengthPassAndFitTheEntry(
      @ForAll @AlphaChars @StringLength(min = 1, max = 8) String stem,
      @ForAll @AlphaChars @StringLength(min = 1, max = 3) String ending) {
    assertThat(ShortName.valid(stem + "." + ending)).isTrue();
    assertThat(stem.length() + ending.length()).isLessThanOrEqualTo(ShortName.ENTRY_BYTES);
  }

  @Property(tries = 200)
  void longerStemsNeverPass(@ForAll @AlphaChars @StringLength(min = 9, max = 40) String stem) {
    assertThat(ShortName.valid(stem + ".BIN")).isFalse();
  }
}
