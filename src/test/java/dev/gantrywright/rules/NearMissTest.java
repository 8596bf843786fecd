package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearMissTest {
  @ParameterizedTest
  @CsvSource({
    "PERCH_FULMER_M4, PERCH_FULMAR_M4",
    "perch-fulmar-m4, PERCH_FULMAR_M4",
    "PERCH_FULAMR_M4, PERCH_FULMAR_M4",
    "PERCHFULMARM4, PERCH_FULMAR_M4",
    "PERCH_PETREL_8, ",
    "PERCH_KITTIWAKE, "
  })
  void findsTheOneNameThatIsClose(String given, String meant) {
    assertThat(NearMiss.of(given, List.of("PERCH_FULMAR_M4", "PERCH_PETREL_80", "PERCH_PETREL_81")))
        .isEqualTo(java.util.Optional.ofNullable(meant));
  }

  @ParameterizedTest
  @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "'', abc, 3", "abc, abc, 0", "ca, abc, 3"})
  void countsEdits(String a, String b, int edits) {
    assertThat(NearMiss.distance(a, b)).isEqualTo(edits);
  }

  @Property
  void distanceIsSymmetricAndZeroOnlyForEqualNames(
      @ForAll @AlphaChars @StringLength(max = 9) String a,
      @ForAll @AlphaChars @StringLength(max = 9) String b) {
    assertThat(NearMiss.distance(a, b)).isEqualTo(NearMiss.distance(b, a));
    assertThat(NearMiss.distance(a, b) == 0).isEqualTo(a.equals(b));
    assertThat(NearMiss.distance(a, b)).isLessThanOrEqualTo(Math.max(a.length(), b.length()));
  }
}
