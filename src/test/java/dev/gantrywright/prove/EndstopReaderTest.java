package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.DialectFile;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EndstopReaderTest {
  private final EndstopReader reader = new EndstopReader(DialectFile.standard());

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/prove/endstop-replies.csv", delimiter = '|', numLinesToSkip = 1)
  void readsWhatFirmwareAnswers(String line, String expected) {
    String seen =
        reader.read(List.of(line)).stream()
            .map(r -> r.name() + "=" + (r.triggered() ? "triggered" : "open"))
            .collect(Collectors.joining(", "));
    assertThat(seen).isEqualTo(expected == null ? "" : expected);
  }

  @Test
  void wordsAreThoseOfTheProfile() {
    EndstopReader own =
        new EndstopReader(
            DialectFile.with(
                Map.of("triggeredWords", List.of("made"), "openWords", List.of("broken"))));
    assertThat(own.read(List.of("x: made", "y: BROKEN", "z: open")))
        .containsExactly(
            new EndstopReading("x", true, "made"), new EndstopReading("y", false, "BROKEN"));
  }

  @Test
  void oneWordCannotMeanBoth() {
    assertThatThrownBy(
            () ->
                new EndstopReader(
                    DialectFile.with(
                        Map.of("triggeredWords", List.of("on"), "openWords", List.of("ON")))))
        .hasMessageContaining("'on'");
  }
}
