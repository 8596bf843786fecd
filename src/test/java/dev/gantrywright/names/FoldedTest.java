package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
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
}
