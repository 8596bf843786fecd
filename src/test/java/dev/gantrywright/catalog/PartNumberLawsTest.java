package dev.gantrywright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.NumericChars;
import net.jqwik.api.constraints.StringLength;

/** Whatever is typed as a part number is answered, and a part found is one that was named. */
class PartNumberLawsTest {
  private static final Catalog CATALOG = Catalog.shipped();

  @Provide
  Arbitrary<Mcu> parts() {
    return Arbitraries.of(CATALOG.mcus());
  }

  @Property
  void anyTextIsAnswered(@ForAll String text) {
    assertThat(CATALOG.mcu(text)).isNotNull();
    assertThat(CATALOG.driver(text)).isNotNull();
    assertThat(CATALOG.belt(text)).isNotNull();
    assertThat(CATALOG.screw(text)).isNotNull();
    assertThat(CATALOG.sensor(text)).isNotNull();
  }

  /**
   * ATmega644P and U: the typed number is an ATmega644 in its PU package, and nothing else fits.
   */
  @Property
  void aPartThatIsFoundIsTheLongestThatTheTextCanMean(
      @ForAll("parts") Mcu part,
      @ForAll @AlphaChars @NumericChars @StringLength(max = 6) String suffix) {
    Optional<Mcu> found = CATALOG.mcu(part.part() + suffix);
    String typed = (part.part() + suffix).toUpperCase(Locale.ROOT);
    found.ifPresent(
        mcu -> {
          String name = mcu.part().toUpperCase(Locale.ROOT);
          assertThat(typed).startsWith(name);
          assertThat(packaging(mcu, typed)).isTrue();
          if (packaging(part, typed)) {
            assertThat(name.length()).isGreaterThanOrEqualTo(part.part().length());
          }
        });
  }

  @Example
  void packageLettersAreNotPartOfTheName() {
    assertThat(CATALOG.mcu("ATmega644PU").orElseThrow().part()).isEqualTo("ATmega644");
    assertThat(CATALOG.mcu("ATmega644P").orElseThrow().part()).isEqualTo("ATmega644P");
    assertThat(CATALOG.mcu("ATmega644P-20PU").orElseThrow().part()).isEqualTo("ATmega644P");
  }

  private static boolean packaging(Mcu part, String typed) {
    String rest = typed.substring(part.part().length());
    return rest.isEmpty() || part.familyFacts().suffix().matcher(rest).matches();
  }
}
