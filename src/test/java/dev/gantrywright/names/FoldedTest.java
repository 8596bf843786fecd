package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoldedTest {
  @ParameterizedTest
  @CsvSource({
    "WING_SPAN_X, wing span x",
    "wingSpanX, wing span x",
    "kWingSpan, wing span",
    "UARTPort, uart port",
    "xMin, x min",
    "E0_AMPS, e0 amps",
    "HEATER0_MAX, heater 0 max",
    "nCounts_X, counts x",
    "MACHINE, machine",
  })
  void identifiersFallIntoWords(String name, String words) {
    assertThat(String.join(" ", Folded.identifier(name))).isEqualTo(words);
  }

  @Test
  void accentsGoAndMisreadUtf8IsRepaired() {
    assertThat(Folded.text("Öffner")).isEqualTo("offner");
    String misread =
        new String("butée".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    assertThat(Folded.text(misread)).isEqualTo("butee");
  }

  @Property
  void neverFails(@ForAll String text) {
    assertThat(Folded.words(text)).isNotNull();
    assertThat(Folded.identifier(text)).isNotNull();
  }

  /** However a name is built of its words, they come out again. */
  @Property
  void everyStyleOfNameGivesItsWords(
      @ForAll @Size(min = 1, max = 5) List<@From("word") String> words) {
    String snake = String.join("_", words);
    assertThat(Folded.identifier(snake)).isEqualTo(words);
    assertThat(Folded.identifier(snake.toUpperCase(Locale.ROOT))).isEqualTo(words);
    assertThat(Folded.identifier("__" + snake.replace("_", "__") + "_")).isEqualTo(words);
    StringBuilder camel = new StringBuilder();
    words.forEach(
        word -> camel.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1)));
    assertThat(Folded.identifier(camel.toString())).isEqualTo(words);
  }

  @Provide
  Arbitrary<String> word() {
    return Arbitraries.strings().withCharRange('a', 'z').ofMinLength(3).ofMaxLength(9);
  }

  @Property
  void wordsAreNeverEmptyAndHoldNoMarks(@ForAll @StringLength(max = 40) String text) {
    assertThat(Folded.words(text)).allMatch(word -> !word.isEmpty());
    assertThat(Folded.identifier(text)).allMatch(word -> !word.isEmpty());
  }
}
