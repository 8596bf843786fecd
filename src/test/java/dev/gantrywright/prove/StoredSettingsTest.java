package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.DialectFile;
import dev.gantrywright.prove.StoredSettings.Value;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoredSettingsTest {
  private final StoredSettings reader = new StoredSettings(DialectFile.standard());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M92 X80.00 Y80.00|stepsPerMm|80.0|2",
        "echo:  m92 x80|stepsPerMm|80|0",
        "keep steps/mm: X80.0000 Y80|stepsPerMm|80|4",
        "Steps per mm X=80.5, Y=81|stepsPerMm|80.5|1",
        "M203 X200.0 Y200.0|maxSpeed|200|1",
        "max speed: X 200|maxSpeed|200|0",
        "M201 X1500|acceleration|1500|0",
        "M906 X800 Y800|driver.current|800|0"
      })
  void readsLetterCodedWords(String line, String field, double value, int decimals) {
    assertThat(reader.read(List.of(line)))
        .containsEntry("axes.x." + field, new Value(value, decimals));
  }

  @Test
  void takesTheLongestMark() {
    // "acceleration" is in both lists of words only once; the label with more letters decides.
    assertThat(reader.read(List.of("maximum speed X5")).keySet())
        .containsExactly("axes.x.maxSpeed");
  }

  @Test
  void leavesOtherLinesAlone() {
    assertThat(reader.read(List.of("M920 X80", "steps X80", "X80", "ok", "M92", "", "T:20 B:21")))
        .isEmpty();
  }

  @Test
  void readsEveryAxisAndTheLastReport() {
    Map<String, Value> values = reader.read(List.of("M92 X80 Y81 E415.20", "M92 X82"));
    assertThat(values)
        .containsEntry("axes.x.stepsPerMm", new Value(82, 0))
        .containsEntry("axes.y.stepsPerMm", new Value(81, 0))
        .containsEntry("axes.e.stepsPerMm", new Value(415.2, 2));
  }
}
